from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class ProblemError(AdditionalDataHolder, Parsable):
    """
    One error of a request.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Stable code. Known today: `json-broken`, `type-wrong`, `member-unknown`, `member-duplicate`, `member-missing`, `unit-missing`, `unit-unknown`, `unit-wrong-dimension`, `unit-ambiguous`, `number-out-of-range`, `number-ambiguous`, `rows-apart`, `text-too-long`, `text-wrong`, `word-unknown`, `too-few`, `too-many`, `net-negative`, `tare-above-gross`, `revolutions-not-positive`, `catches-all-excluded`, `density-missing`, `settings-at-odds`, `not-found`, `method-not-allowed`, `not-acceptable`, `media-type-unsupported`, `body-too-large`, `body-too-slow`, `encoding-unsupported`, `rate-exceeded`, `service-busy`, `request-broken`, `line-too-long`, `element-not-in-meter`, `meter-not-on-machine`, `id-unknown`, `id-taken`, `cursor-invalid`, `time-wrong`, `record-retired`, `records-at-odds`, `value-missing`, `already-superseded`, `precondition-required`, `precondition-failed`, `idempotency-key-reused`, `idempotency-in-flight`, `key-missing`, `key-invalid`, `key-expired`, `key-revoked`, `workspace-retired`, `scope-missing`, `credentials-broken`, `storage-unavailable`, `internal-error`.
    code: Optional[str] = None
    # The column of a table it is about, as its header writes it; absent when it is about no single column.
    column: Optional[str] = None
    # What is wrong and what to do.
    detail: Optional[str] = None
    # The header it is about; absent when it is not about a header.
    header: Optional[str] = None
    # The query parameter it is about; absent when it is not about the query.
    parameter: Optional[str] = None
    # Where in the body, as an RFC 6901 JSON pointer in its URI fragment form, for example `#/catches/0/gross`; absent when it is not about the body.
    pointer: Optional[str] = None
    # The row of a table it is about, as a spreadsheet counts it: the header is row 1. Absent when what was sent is no table.
    row: Optional[int] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ProblemError:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ProblemError
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ProblemError()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "code": lambda n : setattr(self, 'code', n.get_str_value()),
            "column": lambda n : setattr(self, 'column', n.get_str_value()),
            "detail": lambda n : setattr(self, 'detail', n.get_str_value()),
            "header": lambda n : setattr(self, 'header', n.get_str_value()),
            "parameter": lambda n : setattr(self, 'parameter', n.get_str_value()),
            "pointer": lambda n : setattr(self, 'pointer', n.get_str_value()),
            "row": lambda n : setattr(self, 'row', n.get_int_value()),
        }
        return fields
    
    def serialize(self,writer: SerializationWriter) -> None:
        """
        Serializes information the current object
        param writer: Serialization writer to use to serialize this model
        Returns: None
        """
        if writer is None:
            raise TypeError("writer cannot be null.")
        writer.write_str_value("code", self.code)
        writer.write_str_value("column", self.column)
        writer.write_str_value("detail", self.detail)
        writer.write_str_value("header", self.header)
        writer.write_str_value("parameter", self.parameter)
        writer.write_str_value("pointer", self.pointer)
        writer.write_int_value("row", self.row)
        writer.write_additional_data_value(self.additional_data)
    

