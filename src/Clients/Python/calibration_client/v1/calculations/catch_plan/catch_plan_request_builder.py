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
    from ....models.catch_plan_answer import CatchPlanAnswer
    from ....models.catch_plan_request import CatchPlanRequest
    from ....models.problem import Problem
    from .batch.batch_request_builder import BatchRequestBuilder
    from .post_units_query_parameter_type import PostUnitsQueryParameterType

class CatchPlanRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/calculations/catch-plan
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new CatchPlanRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/calculations/catch-plan{?units*}", path_parameters)
    
    async def post(self,body: CatchPlanRequest, request_configuration: Optional[RequestConfiguration[CatchPlanRequestBuilderPostQueryParameters]] = None) -> Optional[CatchPlanAnswer]:
        """
        For each meter: how much to catch and which bound acts, revolutions, run time, meter speed against its limits,container fill, and how many catches the wanted precision takes; for the common run: when to stop which meter, thesteps with their dependencies, and the cautions. Nothing is stored.
        param body: A catch test to be planned: one or several meters in one run.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[CatchPlanAnswer]
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
        from ....models.catch_plan_answer import CatchPlanAnswer

        return await self.request_adapter.send_async(request_info, CatchPlanAnswer, error_mapping)
    
    def to_post_request_information(self,body: CatchPlanRequest, request_configuration: Optional[RequestConfiguration[CatchPlanRequestBuilderPostQueryParameters]] = None) -> RequestInformation:
        """
        For each meter: how much to catch and which bound acts, revolutions, run time, meter speed against its limits,container fill, and how many catches the wanted precision takes; for the common run: when to stop which meter, thesteps with their dependencies, and the cautions. Nothing is stored.
        param body: A catch test to be planned: one or several meters in one run.
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
    
    def with_url(self,raw_url: str) -> CatchPlanRequestBuilder:
        """
        Returns a request builder with the provided arbitrary URL. Using this method means any other path or query parameters are ignored.
        param raw_url: The raw URL to use for the request builder.
        Returns: CatchPlanRequestBuilder
        """
        if raw_url is None:
            raise TypeError("raw_url cannot be null.")
        return CatchPlanRequestBuilder(self.request_adapter, raw_url)
    
    @property
    def batch(self) -> BatchRequestBuilder:
        """
        The batch property
        """
        from .batch.batch_request_builder import BatchRequestBuilder

        return BatchRequestBuilder(self.request_adapter, self.path_parameters)
    
    @dataclass
    class CatchPlanRequestBuilderPostQueryParameters():
        """
        For each meter: how much to catch and which bound acts, revolutions, run time, meter speed against its limits,container fill, and how many catches the wanted precision takes; for the common run: when to stop which meter, thesteps with their dependencies, and the cautions. Nothing is stored.
        """
        # Units of the answer; as-asked takes those of the question.
        units: Optional[PostUnitsQueryParameterType] = None

    
    @dataclass
    class CatchPlanRequestBuilderPostRequestConfiguration(RequestConfiguration[CatchPlanRequestBuilderPostQueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    

