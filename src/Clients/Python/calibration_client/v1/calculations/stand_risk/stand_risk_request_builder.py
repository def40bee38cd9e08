from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.base_request_builder import BaseRequestBuilder
from kiota_abstractions.base_request_configuration import RequestConfiguration
from kiota_abstractions.default_query_parameters import QueryParameters
from kiota_abstractions.get_path_parameters import get_path_parameters
from kiota_abstractions.method import Method
from kiota_abstractions.request_adapter import RequestAdapter
from kiota_abstractions.request_information import RequestInformation
from kiota_abstractions.request_option import RequestOption
from kiota_abstractions.serialization import Parsable, ParsableFactory
from typing import Any, Optional, TYPE_CHECKING, Union
from warnings import warn

if TYPE_CHECKING:
    from ....models.problem import Problem
    from ....models.stand_risk_answer import StandRiskAnswer
    from ....models.stand_risk_request import StandRiskRequest
    from .batch.batch_request_builder import BatchRequestBuilder
    from .post_units_query_parameter_type import PostUnitsQueryParameterType

class StandRiskRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/calculations/stand-risk
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new StandRiskRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/calculations/stand-risk{?units*}", path_parameters)
    
    async def post(self,body: StandRiskRequest, request_configuration: Optional[RequestConfiguration[StandRiskRequestBuilderPostQueryParameters]] = None) -> Optional[StandRiskAnswer]:
        """
        Emergence differs from season to season, and germination, kernel mass and metering are known only so well. The answer has therate that reaches the minimum stand all the same with the wanted probability, what its margin costs, and how probable theminimum stand is at a rate of your own. Nothing is stored.
        param body: A minimum stand, what is known of the seed, and how much of it may come up.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[StandRiskAnswer]
        """
        if body is None:
            raise TypeError("body cannot be null.")
        request_info = self.to_post_request_information(
            body, request_configuration
        )
        from ....models.problem import Problem

        error_mapping: dict[str, type[ParsableFactory]] = {
            "400": Problem,
            "401": Problem,
            "403": Problem,
            "408": Problem,
            "413": Problem,
            "415": Problem,
            "422": Problem,
            "429": Problem,
            "500": Problem,
            "503": Problem,
        }
        if not self.request_adapter:
            raise Exception("Http core is null") 
        from ....models.stand_risk_answer import StandRiskAnswer

        return await self.request_adapter.send_async(request_info, StandRiskAnswer, error_mapping)
    
    def to_post_request_information(self,body: StandRiskRequest, request_configuration: Optional[RequestConfiguration[StandRiskRequestBuilderPostQueryParameters]] = None) -> RequestInformation:
        """
        Emergence differs from season to season, and germination, kernel mass and metering are known only so well. The answer has therate that reaches the minimum stand all the same with the wanted probability, what its margin costs, and how probable theminimum stand is at a rate of your own. Nothing is stored.
        param body: A minimum stand, what is known of the seed, and how much of it may come up.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: RequestInformation
        """
        if body is None:
            raise TypeError("body cannot be null.")
        request_info = RequestInformation(Method.POST, self.url_template, self.path_parameters)
        request_info.configure(request_configuration)
        request_info.headers.try_add("Accept", "application/json")
        request_info.set_content_from_parsable(self.request_adapter, "application/json", body)
        return request_info
    
    def with_url(self,raw_url: str) -> StandRiskRequestBuilder:
        """
        Returns a request builder with the provided arbitrary URL. Using this method means any other path or query parameters are ignored.
        param raw_url: The raw URL to use for the request builder.
        Returns: StandRiskRequestBuilder
        """
        if raw_url is None:
            raise TypeError("raw_url cannot be null.")
        return StandRiskRequestBuilder(self.request_adapter, raw_url)
    
    @property
    def batch(self) -> BatchRequestBuilder:
        """
        The batch property
        """
        from .batch.batch_request_builder import BatchRequestBuilder

        return BatchRequestBuilder(self.request_adapter, self.path_parameters)
    
    @dataclass
    class StandRiskRequestBuilderPostQueryParameters():
        """
        Emergence differs from season to season, and germination, kernel mass and metering are known only so well. The answer has therate that reaches the minimum stand all the same with the wanted probability, what its margin costs, and how probable theminimum stand is at a rate of your own. Nothing is stored.
        """
        # Units of the answer; as-asked takes those of the question.
        units: Optional[PostUnitsQueryParameterType] = None

    
    @dataclass
    class StandRiskRequestBuilderPostRequestConfiguration(RequestConfiguration[StandRiskRequestBuilderPostQueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    

