#!/usr/bin/env bash
# Makes anew what the TypeScript and the Python client have of openapi/v1.json. The C# client is made while building.
set -euo pipefail
cd "$(dirname "$0")"

python3 Python/scripts/generate.py
node generate-units.mjs
npm ci --prefix TypeScript --no-audit --no-fund
npm run --prefix TypeScript generate
