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
    from ....models.plan_answer import PlanAnswer
    from ....models.plan_request import PlanRequest
    from ....models.problem import Problem
    from .catch_plan.catch_plan_request_builder import CatchPlanRequestBuilder
    from .get_units_query_parameter_type import GetUnitsQueryParameterType
    from .set_up.set_up_request_builder import SetUpRequestBuilder

class PlansItemRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/plans/{id}
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new PlansItemRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/plans/{id}{?units*}", path_parameters)
    
    async def get(self,request_configuration: Optional[RequestConfiguration[PlansItemRequestBuilderGetQueryParameters]] = None) -> Optional[PlanAnswer]:
        """
        As entered, with its revision. If-None-Match with the ETag saves the transfer.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[PlanAnswer]
        """
        request_info = self.to_get_request_information(
            request_configuration
        )
        from ....models.problem import Problem

        error_mapping: dict[str, type[ParsableFactory]] = {
            "400": Problem,
            "401": Problem,
            "403": Problem,
            "404": Problem,
            "422": Problem,
            "429": Problem,
            "500": Problem,
            "503": Problem,
        }
        if not self.request_adapter:
            raise Exception("Http core is null") 
        from ....models.plan_answer import PlanAnswer

        return await self.request_adapter.send_async(request_info, PlanAnswer, error_mapping)
    
    async def put(self,body: PlanRequest, request_configuration: Optional[RequestConfiguration[QueryParameters]] = None) -> Optional[PlanAnswer]:
        """
        The whole description takes the place of the earlier one. Send the ETag of your last GET as If-Match.
        param body: A plan for a field: which meter puts down which product at which rate, and the catch test that goes before.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[PlanAnswer]
        """
        if body is None:
            raise TypeError("body cannot be null.")
        request_info = self.to_put_request_information(
            body, request_configuration
        )
        from ....models.problem import Problem

        error_mapping: dict[str, type[ParsableFactory]] = {
            "400": Problem,
            "401": Problem,
            "403": Problem,
            "404": Problem,
            "408": Problem,
            "412": Problem,
            "413": Problem,
            "415": Problem,
            "422": Problem,
            "428": Problem,
            "429": Problem,
            "500": Problem,
            "503": Problem,
        }
        if not self.request_adapter:
            raise Exception("Http core is null") 
        from ....models.plan_answer import PlanAnswer

        return await self.request_adapter.send_async(request_info, PlanAnswer, error_mapping)
    
    def to_get_request_information(self,request_configuration: Optional[RequestConfiguration[PlansItemRequestBuilderGetQueryParameters]] = None) -> RequestInformation:
        """
        As entered, with its revision. If-None-Match with the ETag saves the transfer.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: RequestInformation
        """
        request_info = RequestInformation(Method.GET, self.url_template, self.path_parameters)
        request_info.configure(request_configuration)
        request_info.headers.try_add("Accept", "application/json")
        return request_info
    
    def to_put_request_information(self,body: PlanRequest, request_configuration: Optional[RequestConfiguration[QueryParameters]] = None) -> RequestInformation:
        """
        The whole description takes the place of the earlier one. Send the ETag of your last GET as If-Match.
        param body: A plan for a field: which meter puts down which product at which rate, and the catch test that goes before.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: RequestInformation
        """
        if body is None:
            raise TypeError("body cannot be null.")
        request_info = RequestInformation(Method.PUT, self.url_template, self.path_parameters)
        request_info.configure(request_configuration)
        request_info.headers.try_add("Accept", "application/json")
        request_info.set_content_from_parsable(self.request_adapter, "application/json", body)
        return request_info
    
    def with_url(self,raw_url: str) -> PlansItemRequestBuilder:
        """
        Returns a request builder with the provided arbitrary URL. Using this method means any other path or query parameters are ignored.
        param raw_url: The raw URL to use for the request builder.
        Returns: PlansItemRequestBuilder
        """
        if raw_url is None:
            raise TypeError("raw_url cannot be null.")
        return PlansItemRequestBuilder(self.request_adapter, raw_url)
    
    @property
    def catch_plan(self) -> CatchPlanRequestBuilder:
        """
        The catchPlan property
        """
        from .catch_plan.catch_plan_request_builder import CatchPlanRequestBuilder

        return CatchPlanRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def set_up(self) -> SetUpRequestBuilder:
        """
        The setUp property
        """
        from .set_up.set_up_request_builder import SetUpRequestBuilder

        return SetUpRequestBuilder(self.request_adapter, self.path_parameters)
    
    @dataclass
    class PlansItemRequestBuilderGetQueryParameters():
        """
        As entered, with its revision. If-None-Match with the ETag saves the transfer.
        """
        # Units of the answer; as-asked keeps what was entered.
        units: Optional[GetUnitsQueryParameterType] = None

    
    @dataclass
    class PlansItemRequestBuilderGetRequestConfiguration(RequestConfiguration[PlansItemRequestBuilderGetQueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    
    @dataclass
    class PlansItemRequestBuilderPutRequestConfiguration(RequestConfiguration[QueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    

