"""Builds the package (PEP 517). There is nothing to compile, so what it takes is in the standard library: installing needs no network."""

from __future__ import annotations

import base64
import hashlib
import re
import tarfile
import zipfile
from pathlib import Path
from typing import Any

FOLDER = Path(__file__).resolve().parent.parent
PACKAGE = "calibration_client"
ALWAYS = (2026, 1, 1, 0, 0, 0)


def build_wheel(wheel_directory: str, config_settings: Any = None, metadata_directory: str | None = None) -> str:
    files = {f"{PACKAGE}/{path.name}": path.read_bytes() for path in sorted((FOLDER / PACKAGE).iterdir()) if path.is_file()}
    return _write_wheel(Path(wheel_directory), files)


def build_editable(wheel_directory: str, config_settings: Any = None, metadata_directory: str | None = None) -> str:
    return _write_wheel(Path(wheel_directory), {f"{PACKAGE}.pth": f"{FOLDER}\n".encode()})


def build_sdist(sdist_directory: str, config_settings: Any = None) -> str:
    stem = f"{_file_name()}-{_project()['version']}"
    with tarfile.open(Path(sdist_directory) / f"{stem}.tar.gz", "w:gz") as archive:
        for part in ("pyproject.toml", "README.md", "scripts/build_package.py", PACKAGE):
            archive.add(FOLDER / part, f"{stem}/{part}", filter=lambda entry: None if "__pycache__" in entry.name else entry)
    return f"{stem}.tar.gz"


def _write_wheel(folder: Path, files: dict[str, bytes]) -> str:
    project = _project()
    name = f"{_file_name()}-{project['version']}"
    about = f"{name}.dist-info"
    files[f"{about}/METADATA"] = _metadata(project)
    files[f"{about}/WHEEL"] = b"Wheel-Version: 1.0\nGenerator: build_package\nRoot-Is-Purelib: true\nTag: py3-none-any\n"
    record = "".join(f"{path},sha256={_hash(content)},{len(content)}\n" for path, content in files.items())
    files[f"{about}/RECORD"] = f"{record}{about}/RECORD,,\n".encode()
    with zipfile.ZipFile(folder / f"{name}-py3-none-any.whl", "w", zipfile.ZIP_DEFLATED) as wheel:
        for path, content in files.items():
            # The same source makes the same file.
            wheel.writestr(zipfile.ZipInfo(path, ALWAYS), content, zipfile.ZIP_DEFLATED)
    return f"{name}-py3-none-any.whl"


def _metadata(project: dict[str, str]) -> bytes:
    head = {
        "Metadata-Version": "2.1",
        "Name": project["name"],
        "Version": project["version"],
        "Summary": project["description"],
        "Requires-Python": project["requires-python"],
        "Description-Content-Type": "text/markdown",
    }
    readme = (FOLDER / "README.md").read_text("utf-8")
    return ("".join(f"{name}: {value}\n" for name, value in head.items()) + f"\n{readme}").encode()


def _project() -> dict[str, str]:
    # The library's reader of this format came with Python 3.11; the table holds plain texts only.
    table = (FOLDER / "pyproject.toml").read_text("utf-8").split("[project]\n")[1].split("\n[")[0]
    return dict(re.findall(r'^([a-z-]+) = "(.*)"$', table, re.MULTILINE))


def _file_name() -> str:
    return _project()["name"].replace("-", "_")


def _hash(content: bytes) -> str:
    return base64.urlsafe_b64encode(hashlib.sha256(content).digest()).rstrip(b"=").decode()
