from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class OpenPointOfPlan(AdditionalDataHolder, Parsable):
    """
    Something that keeps a part of the set-up from being computed.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Stable code, as in problems. Known today: `json-broken`, `type-wrong`, `member-unknown`, `member-duplicate`, `member-missing`, `unit-missing`, `unit-unknown`, `unit-wrong-dimension`, `unit-ambiguous`, `number-out-of-range`, `number-ambiguous`, `rows-apart`, `text-too-long`, `text-wrong`, `word-unknown`, `too-few`, `too-many`, `net-negative`, `tare-above-gross`, `revolutions-not-positive`, `catches-all-excluded`, `density-missing`, `settings-at-odds`, `not-found`, `method-not-allowed`, `not-acceptable`, `media-type-unsupported`, `body-too-large`, `body-too-slow`, `encoding-unsupported`, `rate-exceeded`, `service-busy`, `request-broken`, `line-too-long`, `element-not-in-meter`, `meter-not-on-machine`, `id-unknown`, `id-taken`, `cursor-invalid`, `time-wrong`, `record-retired`, `records-at-odds`, `value-missing`, `already-superseded`, `precondition-required`, `precondition-failed`, `idempotency-key-reused`, `idempotency-in-flight`, `key-missing`, `key-invalid`, `key-expired`, `key-revoked`, `workspace-retired`, `scope-missing`, `credentials-broken`, `storage-unavailable`, `internal-error`.
    code: Optional[str] = None
    # What is missing or wrong, and what to do.
    detail: Optional[str] = None
    # The member of the plan that it is about.
    pointer: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> OpenPointOfPlan:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: OpenPointOfPlan
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return OpenPointOfPlan()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "code": lambda n : setattr(self, 'code', n.get_str_value()),
            "detail": lambda n : setattr(self, 'detail', n.get_str_value()),
            "pointer": lambda n : setattr(self, 'pointer', n.get_str_value()),
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
        writer.write_str_value("detail", self.detail)
        writer.write_str_value("pointer", self.pointer)
        writer.write_additional_data_value(self.additional_data)
    

