#!/usr/bin/env bash
# Makes the generated part of the C# client anew from openapi/v1.json. With a folder as argument, from and into that folder,
# which has to be laid out like the repository.
set -euo pipefail
cd "$(dirname "$0")/../.."
root=$(cd "${1:-.}" && pwd)

# The generator asks nobody outside for news and sends none itself.
export KIOTA_OFFLINE_ENABLED=true KIOTA_TUTORIAL_ENABLED=false KIOTA_CLI_TELEMETRY_OPTOUT=1 DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

dotnet tool restore

generate() {
  # Addresses are kept as text; saying so once for each list would only hide what matters.
  dotnet kiota generate --openapi "$root/openapi/v1.json" --exclude-backward-compatible --clean-output \
    --log-level Warning --disable-validation-rules KnownAndNotSupportedFormats "$@"
  # Its log says nothing that its output does not.
  rm -f "${*: -1}/.kiota.log"
}

generate --language CSharp --namespace-name CalibrationApi.Client --class-name CalibrationCore \
  --serializer Microsoft.Kiota.Serialization.Json.JsonSerializationWriterFactory \
  --deserializer Microsoft.Kiota.Serialization.Json.JsonParseNodeFactory \
  --output "$root/src/Clients/CSharp/Generated"
