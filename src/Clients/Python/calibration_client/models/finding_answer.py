from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

@dataclass
class FindingAnswer(AdditionalDataHolder, Parsable):
    """
    Something the engine noticed.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Stable code. Known today: `change-detected`, `no-practical-change`, `within-tolerance`, `within-tolerance-not-shown`, `no-value-in-force`, `large-change`, `precision-not-reached`, `precision-out-of-reach`, `catches-scatter-more-than-expected`, `likely-mistake`, `cannot-be-told-apart`, `stray-catch`, `first-catch-low`, `trend-over-catches`, `additive-offset`, `small-catch`, `coarse-scale`, `load-beyond-class`, `scale-dominates`, `default-repeatability-used`, `catch-excluded`, `mixed-mass-units`, `entry-resolution-matters`, `outside-meter-window`, `near-meter-limit`, `container-nearly-full`, `bounds-cross`, `wide-speed-range`, `outside-measured-speeds`, `stops-close-together`, `conditions-differ`, `varies-from-day-to-day`, `scale-check-overdue`, `scale-check-failed`, `scale-check-failed-later`, `scale-check-changed`, `value-in-force-changed`, `basis-superseded`, `other-lot`, `adopted-otherwise`, `above-published-limit`, `no-published-limit`, `nutrient-without-limit`, `sources-disagree`, `region-not-stated`, `nitrogen-form-not-stated`, `between-published-limits`, `limit-reduced`, `spread-unusual`, `nutrient-without-source`, `credits-above-target`, `most-rate-binds`, `least-rate-binds`, `targets-conflict`, `large-surplus`, `unusual-product-rate`, `element-or-oxide`, `shortcut-reads-high`, `stated-rate-differs`, `small-sample`, `kernel-mass-unusual`, `germination-low`, `emergence-unusual`, `seeds-above-published`, `density-unknown`, `density-differs`, `densities-far-apart`, `treatment-changed`, `kernels-of-one-lot-differ`, `nothing-changed`, `germination-changed`, `rate-not-recomputed`, `sample-area-miscalled`, `divide-by-ten-shortcut`, `counts-at-odds-with-prior`, `stated-stand-differs`, `no-plants-found`, `single-count`, `few-counts`, `more-counts-needed`, `strongly-clumped`, `counts-in-same-row`, `more-plants-than-seeds`, `prior-outweighs-counts`, `stand-below-minimum`, `stand-at-risk`, `rate-above-maximum`, `probability-out-of-reach`, `season-spread-missing`, `unusual-share-of-seeds`, `density-unlike-reference`, `density-not-compared`, `published-density-only`, `weighings-scatter`, `small-volume`, `other-bushel`, `test-weight-settled`, `more-than-the-element-holds`, `fill-unlike-expected`, `unusual-field-efficiency`, `outside-fan-window`, `near-fan-limit`, `no-common-fan-window`, `fan-limit-not-checked`, `distance-changed`, `large-distance-change`, `more-runs-needed`, `runs-out-of-reach`, `runs-scatter-more-than-expected`, `directions-differ`, `short-course`, `one-run-only`, `tape-dominates`, `wheel-slips`, `width-differs`, `rate-implausible`, `rate-off-target`, `rate-not-shown`, `outlet-gave-nothing`, `outlet-off-mean`, `large-correction`, `circumference-from-diameter`, `skid-counted-twice`.
    code: Optional[str] = None
    # A sentence that can be shown as it is.
    detail: Optional[str] = None
    # The meter it is about, where the question held several.
    meter: Optional[str] = None
    # How much it matters: `note` is worth knowing, `warning` wants a look, `stop` forbids seeding on this answer.
    severity: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> FindingAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: FindingAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return FindingAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        fields: dict[str, Callable[[Any], None]] = {
            "code": lambda n : setattr(self, 'code', n.get_str_value()),
            "detail": lambda n : setattr(self, 'detail', n.get_str_value()),
            "meter": lambda n : setattr(self, 'meter', n.get_str_value()),
            "severity": lambda n : setattr(self, 'severity', n.get_str_value()),
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
        writer.write_str_value("meter", self.meter)
        writer.write_str_value("severity", self.severity)
        writer.write_additional_data_value(self.additional_data)
    

