from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .bulk_density_quantity import BulkDensityQuantity
    from .moisture_answer import MoistureAnswer
    from .published_density_answer import PublishedDensityAnswer
    from .ratio_quantity import RatioQuantity

@dataclass
class ReferenceAnswer(AdditionalDataHolder, Parsable):
    """
    A density beside the published ones for its material. Information and a check: a measured density always goes first.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # How far the density is outside the published range, relative to its nearer end: above zero denser, below zero lighter, zero inside.
    beyond: Optional[RatioQuantity] = None
    # The densest published value.
    densest: Optional[BulkDensityQuantity] = None
    # The lightest published value.
    lightest: Optional[BulkDensityQuantity] = None
    # The material. Known today: `alfalfa`, `ammonium-nitrate-low-density`, `ammonium-nitrate-prilled`, `ammonium-sulfate-crystal`, `ammonium-sulfate-granular`, `barley`, `birdsfoot-trefoil`, `bluegrass`, `brome-grass`, `canary-seed`, `canola`, `chickpea`, `clover`, `cowpea`, `diammonium-phosphate`, `faba-bean`, `flax`, `lupin`, `corn`, `millet`, `monoammonium-phosphate`, `oat`, `orchard-grass`, `pea`, `potassium-chloride-granular`, `potassium-chloride-soluble`, `potassium-magnesium-sulfate`, `rice`, `rye`, `safflower`, `sorghum`, `soybean`, `sudan-grass`, `sugar-beet`, `sunflower`, `tall-fescue`, `timothy`, `triple-superphosphate`, `triticale`, `urea-granular`, `vetch`, `wheat`.
    material: Optional[str] = None
    # How the density of the material was found to change with moisture. Information only: nothing was corrected.
    moisture: Optional[list[MoistureAnswer]] = None
    # Every published value as printed, with its source. Where sources differ, all are here.
    published: Optional[list[PublishedDensityAnswer]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ReferenceAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ReferenceAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ReferenceAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .bulk_density_quantity import BulkDensityQuantity
        from .moisture_answer import MoistureAnswer
        from .published_density_answer import PublishedDensityAnswer
        from .ratio_quantity import RatioQuantity

        from .bulk_density_quantity import BulkDensityQuantity
        from .moisture_answer import MoistureAnswer
        from .published_density_answer import PublishedDensityAnswer
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "beyond": lambda n : setattr(self, 'beyond', n.get_object_value(RatioQuantity)),
            "densest": lambda n : setattr(self, 'densest', n.get_object_value(BulkDensityQuantity)),
            "lightest": lambda n : setattr(self, 'lightest', n.get_object_value(BulkDensityQuantity)),
            "material": lambda n : setattr(self, 'material', n.get_str_value()),
            "moisture": lambda n : setattr(self, 'moisture', n.get_collection_of_object_values(MoistureAnswer)),
            "published": lambda n : setattr(self, 'published', n.get_collection_of_object_values(PublishedDensityAnswer)),
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
        writer.write_object_value("beyond", self.beyond)
        writer.write_object_value("densest", self.densest)
        writer.write_object_value("lightest", self.lightest)
        writer.write_str_value("material", self.material)
        writer.write_collection_of_object_values("moisture", self.moisture)
        writer.write_collection_of_object_values("published", self.published)
        writer.write_additional_data_value(self.additional_data)
    

