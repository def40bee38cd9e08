from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ratio_quantity import RatioQuantity

@dataclass
class ScatterAnswer(AdditionalDataHolder, Parsable):
    """
    How counts scatter from spot to spot.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The part of it that chance does not explain; zero when chance explains all.
    beyond_chance: Optional[RatioQuantity] = None
    # Standard deviation of the densities of the spots over the density of all.
    coefficient_of_variation: Optional[RatioQuantity] = None
    # Variance of the counts over what chance gives: about 1 for plants placed by chance, more when they stand clumped.
    index_of_dispersion: Optional[float] = None
    # How often chance alone scatters counts at least so much.
    probability_by_chance: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ScatterAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ScatterAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ScatterAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ratio_quantity import RatioQuantity

        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "beyondChance": lambda n : setattr(self, 'beyond_chance', n.get_object_value(RatioQuantity)),
            "coefficientOfVariation": lambda n : setattr(self, 'coefficient_of_variation', n.get_object_value(RatioQuantity)),
            "indexOfDispersion": lambda n : setattr(self, 'index_of_dispersion', n.get_float_value()),
            "probabilityByChance": lambda n : setattr(self, 'probability_by_chance', n.get_float_value()),
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
        writer.write_object_value("beyondChance", self.beyond_chance)
        writer.write_object_value("coefficientOfVariation", self.coefficient_of_variation)
        writer.write_float_value("indexOfDispersion", self.index_of_dispersion)
        writer.write_float_value("probabilityByChance", self.probability_by_chance)
        writer.write_additional_data_value(self.additional_data)
    

