"""Writes what the client knows of the contract: its types, quantities and operations, and the table of methods in the README.

`python3 scripts/generate.py` writes them here; another folder can be named, so that a test can compare.
"""

from __future__ import annotations

import json
import keyword
import re
import sys
import textwrap
from collections.abc import Iterator
from pathlib import Path
from typing import Any

HERE = Path(__file__).resolve().parent.parent
CONTRACT = HERE.parents[2] / "openapi" / "v1.json"
HEADING = '"""Made from openapi/v1.json by scripts/generate.py. Never edit it by hand."""\n\nfrom __future__ import annotations\n\n'
METHODS = ("get", "post", "put")
MARKS = ("<!-- methods -->", "<!-- /methods -->")
WIDTH = 120
Json = dict[str, Any]


def main() -> None:
    target = Path(sys.argv[1]) if len(sys.argv) > 1 else HERE
    contract: Json = json.loads(CONTRACT.read_text("utf-8"))
    operations = list(operations_of(contract))
    package = target / "calibration_client"
    package.mkdir(parents=True, exist_ok=True)
    write(package / "schema.py", schema_module(contract["components"]["schemas"]))
    write(package / "quantities.py", quantities_module(contract["components"]["schemas"]))
    write(package / "operations.py", operations_module(operations))
    write(target / "README.md", readme(operations))


def write(path: Path, text: str) -> None:
    path.write_text(text, "utf-8", newline="\n")


# Types


def schema_module(schemas: dict[str, Json]) -> str:
    imports = (
        "import sys\n"
        "from typing import TYPE_CHECKING, Literal, TypedDict\n\n"
        "if TYPE_CHECKING:\n"
        "    from typing_extensions import NotRequired\n"
        "elif sys.version_info >= (3, 11):\n"
        "    from typing import NotRequired\n"
    )
    units = "".join(f"{unit_type(name)} = {literal(words)}\n" for name, words in quantities_of(schemas).items())
    return HEADING + imports + "\n" + units + "".join(typed_dict(name, schema, schemas) for name, schema in schemas.items())


def typed_dict(name: str, schema: Json, schemas: dict[str, Json]) -> str:
    members = {member: annotation(member, schema, schemas) for member in schema["properties"]}
    about = schema.get("description", "")
    if not all(member.isidentifier() and not keyword.iskeyword(member) for member in members):
        # A member whose name is no name in Python needs the other way to write a type.
        rows = "".join(f"        {text(member)}: {text(kind)},\n" for member, kind in members.items())
        return f'\n\n{name} = TypedDict(\n    "{name}",\n    {{\n{rows}    }},\n)\n{docstring(about, "")}'
    described = {member: docstring(schema["properties"][member].get("description", ""), "    ") for member in members}
    body = "".join(f"\n    {member}: {kind}\n{described[member]}" for member, kind in members.items())
    return f"\n\nclass {name}(TypedDict):\n{docstring(about, '    ')}{body}"


def annotation(member: str, schema: Json, schemas: dict[str, Json]) -> str:
    kind = type_of(schema["properties"][member], schemas)
    return kind if member in schema.get("required", []) else f"NotRequired[{kind}]"


def type_of(schema: Json, schemas: dict[str, Json]) -> str:
    if "$ref" in schema:
        name = schema["$ref"].rsplit("/", 1)[-1]
        plain = plain_quantity_of(schemas[name], schemas)
        return f"{name} | {plain}" if plain and plain != name else name
    if "enum" in schema:
        return next((unit_type(name) for name, units in quantities_of(schemas).items() if units == schema["enum"]), literal(schema["enum"]))
    match schema["type"]:
        case "array":
            return f"list[{type_of(schema['items'], schemas)}]"
        case "string":
            return "str"
        case "number":
            return "float"
        case "integer":
            return "int"
        case "boolean":
            return "bool"
        case other:
            raise ValueError(f"The generator does not know how to write the type {other}.")


def literal(words: list[str]) -> str:
    return f"Literal[{', '.join(map(text, words))}]"


# Quantities


def quantities_of(schemas: dict[str, Json]) -> dict[str, list[str]]:
    units = {name: schema["properties"]["unit"].get("enum") for name, schema in schemas.items() if name.endswith("Quantity")}
    return {name: words for name, words in units.items() if words}


def plain_quantity_of(schema: Json, schemas: dict[str, Json]) -> str | None:
    """The quantity that does for a schema that has more than its number and unit, all of which may be left out."""
    if schema.get("additionalProperties") is not False or set(schema.get("required", [])) != {"value", "unit"}:
        return None
    return next((name for name, units in quantities_of(schemas).items() if units == schema["properties"]["unit"].get("enum")), None)


def unit_type(quantity: str) -> str:
    return quantity.removesuffix("Quantity") + "Unit"


def quantities_module(schemas: dict[str, Json]) -> str:
    quantities = quantities_of(schemas)
    units = [unit for words in quantities.values() for unit in words]
    if len(set(units)) != len(units):
        raise ValueError("A unit that belongs to two quantities does not say which of them is meant.")
    names = ",\n    ".join(f"schema.{unit_type(name)}" for name in quantities)
    overloads = "".join(
        f"@overload\ndef quantity(value: float, unit: schema.{unit_type(name)}) -> schema.{name}: ...\n" for name in quantities
    )
    return (
        HEADING
        + "from typing import Any, Union, overload\n\nfrom . import schema\n\n"
        + f"Unit = Union[\n    {names},\n]\n"
        + docstring("Every unit that can be sent.", "")
        + f"\n\n{overloads}def quantity(value: float, unit: str) -> Any:\n"
        + docstring(
            'A quantity, for example `quantity(68, "kg/ha")`, the same as `{"value": 68, "unit": "kg/ha"}`.\n\n'
            "A type checker refuses a unit that does not exist, and a quantity where the contract asks for another one.",
            "    ",
        )
        + '    return {"value": value, "unit": unit}\n'
    )


# Operations


class Operation:
    """An operation of the contract, as a method."""

    def __init__(self, contract: Json, path: str, method: str) -> None:
        item: Json = contract["paths"][path]
        self.json: Json = item[method]
        self.path, self.method = path, method
        self.name = snake(self.json["operationId"])
        shared = contract["components"]["parameters"]
        parameters = [shared[one["$ref"].rsplit("/", 1)[-1]] if "$ref" in one else one for one in self.json.get("parameters", [])]
        self.query: list[Json] = [one for one in parameters if one["in"] == "query" and one["name"] != "cursor"]
        self.headers: list[str] = [one["name"] for one in parameters if one["in"] == "header"]
        self.takes_id = "{id}" in path
        self.gives_pages = any(one["name"] == "cursor" for one in parameters)
        self.asked: Json = self.json.get("requestBody", {}).get("content", {})
        # What is newly stored can have more than what an equal request finds stored, such as the text of a key.
        answered: Json = self.json["responses"].get("201") or self.json["responses"]["200"]
        self.answered: Json = answered["content"]
        self.is_batch = "application/json" not in self.answered
        self.gives_tag = "ETag" in answered.get("headers", {})
        replacing: Json | None = item.get("put") or contract["paths"].get(f"{path}/{{id}}", {}).get("put")
        self.editable = body_type(replacing["requestBody"]["content"]) if replacing and self.gives_tag else None
        self.schemas: dict[str, Json] = contract["components"]["schemas"]

    @property
    def answer(self) -> str:
        return qualified(self.answered["application/x-ndjson" if self.is_batch else "application/json"]["schema"])

    @property
    def returned(self) -> str:
        if self.is_batch:
            return f"Generator[{self.answer}, None, None]"
        if self.gives_pages:
            page = self.schemas[self.answer.removeprefix("schema.")]
            return f"Pages[{qualified(page['properties']['items']['items'])}]"
        if self.editable:
            return f"Described[{self.answer}, {self.editable}]"
        return f"Stored[{self.answer}]" if self.gives_tag else self.answer

    @property
    def parameters(self) -> Iterator[tuple[str, str]]:
        """What the method takes by position, each with its type."""
        if self.takes_id:
            yield "id", "str"
        if self.is_batch:
            yield "questions", f"Iterable[{qualified(self.asked['application/x-ndjson']['schema'])}]"
        elif self.asked:
            yield "body", body_type(self.asked)

    @property
    def options(self) -> Iterator[tuple[str, str, str]]:
        """What the method takes by name: name, type, and what it is for."""
        for one in self.query:
            # Items on a page are a number; pages are followed, so nobody needs them all at once.
            kind = "int" if one["name"] == "limit" else type_of(one["schema"], self.schemas)
            about = "Items on a page, 1 to 1000." if one["name"] == "limit" else one["description"]
            yield argument(one["name"]), f"{kind} | None = None", about
        if "Idempotency-Key" in self.headers:
            about = "A text of your own, the same for each attempt to store the same thing. The client makes one if you give none."
            yield "idempotency_key", "str | None = None", about
        if "If-Match" in self.headers:
            about = "The entity tag of the revision that you are changing. If somebody else changed it first, `VersionConflict` is raised."
            yield "if_match", "str", about

    def source(self) -> str:
        positional, named = [f"{name}: {kind}" for name, kind in self.parameters], [f"{name}: {kind}" for name, kind, _ in self.options]
        if "If-None-Match" not in self.headers:
            return "\n" + self.definition(positional, named, self.returned, f"\n{self.documented()}        return {self.value()}\n")
        about = "The entity tag of the revision that you have; the answer is None if the record is still that one."
        body = (
            f"\n{self.documented(('if_none_match', about))}        answer = {self.asking()}\n"
            f"        return None if answer.status == 304 else {self.record('answer')}\n"
        )
        return "\n" + "".join([
            "    @overload\n", self.definition(positional, [*named, "if_none_match: None = None"], self.returned, " ...\n"),
            "    @overload\n", self.definition(positional, [*named, "if_none_match: str"], f"{self.returned} | None", " ...\n"),
            self.definition(positional, [*named, "if_none_match: str | None = None"], f"{self.returned} | None", body),
        ])

    def definition(self, positional: list[str], named: list[str], returned: str, body: str) -> str:
        given = ["self", *positional, *(["*", *named] if named else [])]
        line = f"    def {self.name}({', '.join(given)}) -> {returned}:"
        if len(line) > WIDTH:
            line = f"    def {self.name}(\n" + "".join(f"        {one},\n" for one in given) + f"    ) -> {returned}:"
        return line + body

    def documented(self, *more: tuple[str, str]) -> str:
        said = "\n\n".join(part for part in (self.json.get("summary"), self.json.get("description")) if part)
        named = [(name, about) for name, _, about in self.options] + list(more)
        if named:
            said += "\n\nArgs:\n" + "\n".join(f"    {name}: {about}" for name, about in named)
        return docstring(said, "        ")

    def value(self) -> str:
        query = "{" + ", ".join(f"{text(one['name'])}: {argument(one['name'])}" for one in self.query) + "}"
        if self.is_batch:
            return f"self._batch({text(self.path)}, questions, {query})"
        if self.gives_pages:
            return f"self._pages({text(self.path)}, {query}{', id' if self.takes_id else ''})"
        return self.record(self.asking()) if self.gives_tag else f'cast("{self.answer}", {self.asking()}.json())'

    def record(self, answer: str) -> str:
        return f"{'described' if self.editable else 'stored'}({answer})"

    def asking(self) -> str:
        given = [text(self.method.upper()), text(self.path), *(["id"] if self.takes_id else [])]
        if self.query:
            given.append("query={" + ", ".join(f"{text(one['name'])}: {argument(one['name'])}" for one in self.query) + "}")
        if self.asked:
            given.append("body=body")
        values = {"Idempotency-Key": "key_or_new(idempotency_key)", "If-Match": "if_match", "If-None-Match": "if_none_match"}
        if self.headers:
            given.append("headers={" + ", ".join(f"{text(name)}: {values[name]}" for name in self.headers) + "}")
        return f"self._ask({', '.join(given)})"


def operations_of(contract: Json) -> Iterator[Operation]:
    for path, item in contract["paths"].items():
        for method in METHODS:
            if method in item:
                yield Operation(contract, path, method)


def operations_module(operations: list[Operation]) -> str:
    return (
        HEADING
        + "from collections.abc import Generator, Iterable\nfrom typing import Literal, cast, overload\n\n"
        + "from . import schema\nfrom .call import Caller, Described, Stored, described, key_or_new, stored\nfrom .pages import Pages\n\n\n"
        + "class Operations(Caller):\n"
        + docstring("The operations of the contract, each a method.", "    ")
        + "".join(operation.source() for operation in operations)
    )


def body_type(content: Json) -> str:
    return qualified(content["application/json"]["schema"])


def qualified(schema: Json) -> str:
    return f"schema.{schema['$ref'].rsplit('/', 1)[-1]}"


def argument(name: str) -> str:
    name = snake(name)
    return f"{name}_" if keyword.iskeyword(name) else name


def snake(name: str) -> str:
    return re.sub("(?=[A-Z])", "_", name).lower()


# Text


def text(value: str) -> str:
    return json.dumps(value, ensure_ascii=False)


def docstring(said: str, indent: str) -> str:
    said = said.strip().replace("\\", "\\\\").replace('"""', "'''")
    if not said:
        return ""
    lines: list[str] = []
    for paragraph in said.split("\n\n"):
        is_list = re.search(r"^(Args:|[-*] )", paragraph, re.MULTILINE)
        for line in paragraph.split("\n") if is_list else [" ".join(paragraph.split())]:
            deeper = " " * (len(line) - len(line.lstrip()))
            width, following = WIDTH - len(indent), deeper + ("    " if is_list else "")
            lines += textwrap.wrap(
                line.strip(), width, initial_indent=deeper, subsequent_indent=following, break_long_words=False, break_on_hyphens=False
            )
        lines.append("")
    lines.pop()
    if len(lines) == 1 and not lines[0].endswith('"'):
        return f'{indent}"""{lines[0]}"""\n'
    return f'{indent}"""' + "\n".join([lines[0], *(f"{indent}{line}".rstrip() for line in lines[1:]), f'{indent}"""\n'])


def readme(operations: list[Operation]) -> str:
    before, rest = (HERE / "README.md").read_text("utf-8").split(MARKS[0])
    after = rest.split(MARKS[1])[1]
    rows = "".join(f"| `{operation.name}` | {operation.json['summary']} |\n" for operation in operations)
    return f"{before}{MARKS[0]}\n\n| method | what it does |\n|---|---|\n{rows}\n{MARKS[1]}{after}"


if __name__ == "__main__":
    main()
