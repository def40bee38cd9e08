from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class LikelyMistakeAnswer(AdditionalDataHolder, Parsable):
    """
    A mistake that would explain a test.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # How many times better it explains the masses than an ordinary change of the meter does; 1000000000 at most.
    bayes_factor: Optional[float] = None
    # The masses alone do not tell it from the others of this list that are marked so too: do the check of each.
    cannot_be_told_apart: Optional[bool] = None
    # JSON pointer to the catch in the question; absent when it would be in the whole test.
    catch: Optional[str] = None
    # The one thing to look at.
    check: Optional[str] = None
    # Stable code; a code that has been checked can be sent back in ruledOutMistakes. Known today: `pounds-as-kilograms`, `kilograms-as-pounds`, `tare-not-taken-off`, `tare-taken-off-twice`, `tare-of-another-container`, `decimal-slip`, `count-doubled`, `count-halved`, `meter-not-primed`, `container-overflowed`, `tank-bridged-or-empty`, `meter-isolated`, `another-element`, `another-product`, `catch-point-missed`, `value-in-force-wrong`, `start-value-wrong`, `something-else`.
    code: Optional[str] = None
    # What was seen and how the mistake explains it.
    detail: Optional[str] = None
    # Probability that it happened, after the masses were looked at. Rests on prior probabilities that are judgement.
    probability: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> LikelyMistakeAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: LikelyMistakeAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return LikelyMistakeAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "bayesFactor": lambda n : setattr(self, 'bayes_factor', n.get_float_value()),
            "cannotBeToldApart": lambda n : setattr(self, 'cannot_be_told_apart', n.get_bool_value()),
            "catch": lambda n : setattr(self, 'catch', n.get_str_value()),
            "check": lambda n : setattr(self, 'check', n.get_str_value()),
            "code": lambda n : setattr(self, 'code', n.get_str_value()),
            "detail": lambda n : setattr(self, 'detail', n.get_str_value()),
            "probability": lambda n : setattr(self, 'probability', n.get_float_value()),
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
        writer.write_float_value("bayesFactor", self.bayes_factor)
        writer.write_bool_value("cannotBeToldApart", self.cannot_be_told_apart)
        writer.write_str_value("catch", self.catch)
        writer.write_str_value("check", self.check)
        writer.write_str_value("code", self.code)
        writer.write_str_value("detail", self.detail)
        writer.write_float_value("probability", self.probability)
        writer.write_additional_data_value(self.additional_data)
    

