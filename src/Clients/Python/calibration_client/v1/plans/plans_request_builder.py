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
    from ...models.plan_answer import PlanAnswer
    from ...models.plan_answer_page import PlanAnswerPage
    from ...models.plan_request import PlanRequest
    from ...models.problem import Problem
    from .get_units_query_parameter_type import GetUnitsQueryParameterType
    from .item.plans_item_request_builder import PlansItemRequestBuilder

class PlansRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/plans
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new PlansRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/plans{?cursor*,includeRetired*,limit*,units*}", path_parameters)
    
    def by_id(self,id: str) -> PlansItemRequestBuilder:
        """
        Gets an item from the calibration_client.v1.plans.item collection
        param id: Id of the record.
        Returns: PlansItemRequestBuilder
        """
        if id is None:
            raise TypeError("id cannot be null.")
        from .item.plans_item_request_builder import PlansItemRequestBuilder

        url_tpl_params = get_path_parameters(self.path_parameters)
        url_tpl_params["id"] = id
        return PlansItemRequestBuilder(self.request_adapter, url_tpl_params)
    
    async def get(self,request_configuration: Optional[RequestConfiguration[PlansRequestBuilderGetQueryParameters]] = None) -> Optional[PlanAnswerPage]:
        """
        In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[PlanAnswerPage]
        """
        request_info = self.to_get_request_information(
            request_configuration
        )
        from ...models.problem import Problem

        error_mapping: dict[str, type[ParsableFactory]] = {
            "400": Problem,
            "401": Problem,
            "403": Problem,
            "406": Problem,
            "422": Problem,
            "429": Problem,
            "500": Problem,
            "503": Problem,
        }
        if not self.request_adapter:
            raise Exception("Http core is null") 
        from ...models.plan_answer_page import PlanAnswerPage

        return await self.request_adapter.send_async(request_info, PlanAnswerPage, error_mapping)
    
    async def post(self,body: PlanRequest, request_configuration: Optional[RequestConfiguration[QueryParameters]] = None) -> Optional[PlanAnswer]:
        """
        Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
        param body: A plan for a field: which meter puts down which product at which rate, and the catch test that goes before.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[PlanAnswer]
        """
        if body is None:
            raise TypeError("body cannot be null.")
        request_info = self.to_post_request_information(
            body, request_configuration
        )
        from ...models.problem import Problem

        error_mapping: dict[str, type[ParsableFactory]] = {
            "400": Problem,
            "401": Problem,
            "403": Problem,
            "408": Problem,
            "409": Problem,
            "413": Problem,
            "415": Problem,
            "422": Problem,
            "429": Problem,
            "500": Problem,
            "503": Problem,
        }
        if not self.request_adapter:
            raise Exception("Http core is null") 
        from ...models.plan_answer import PlanAnswer

        return await self.request_adapter.send_async(request_info, PlanAnswer, error_mapping)
    
    def to_get_request_information(self,request_configuration: Optional[RequestConfiguration[PlansRequestBuilderGetQueryParameters]] = None) -> RequestInformation:
        """
        In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: RequestInformation
        """
        request_info = RequestInformation(Method.GET, self.url_template, self.path_parameters)
        request_info.configure(request_configuration)
        request_info.headers.try_add("Accept", "application/json")
        return request_info
    
    def to_post_request_information(self,body: PlanRequest, request_configuration: Optional[RequestConfiguration[QueryParameters]] = None) -> RequestInformation:
        """
        Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
        param body: A plan for a field: which meter puts down which product at which rate, and the catch test that goes before.
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
    
    def with_url(self,raw_url: str) -> PlansRequestBuilder:
        """
        Returns a request builder with the provided arbitrary URL. Using this method means any other path or query parameters are ignored.
        param raw_url: The raw URL to use for the request builder.
        Returns: PlansRequestBuilder
        """
        if raw_url is None:
            raise TypeError("raw_url cannot be null.")
        return PlansRequestBuilder(self.request_adapter, raw_url)
    
    @dataclass
    class PlansRequestBuilderGetQueryParameters():
        """
        In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
        """
        def get_query_parameter(self,original_name: str) -> str:
            """
            Maps the query parameters names to their encoded names for the URI template parsing.
            param original_name: The original query parameter name in the class.
            Returns: str
            """
            if original_name is None:
                raise TypeError("original_name cannot be null.")
            if original_name == "include_retired":
                return "includeRetired"
            if original_name == "cursor":
                return "cursor"
            if original_name == "limit":
                return "limit"
            if original_name == "units":
                return "units"
            return original_name
        
        # Where to go on: the cursor of the previous page's next link.
        cursor: Optional[str] = None

        # Retired records too: true or false. Default false.
        include_retired: Optional[bool] = None

        # Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
        limit: Optional[str] = None

        # Units of the answer; as-asked keeps what was entered.
        units: Optional[GetUnitsQueryParameterType] = None

    
    @dataclass
    class PlansRequestBuilderGetRequestConfiguration(RequestConfiguration[PlansRequestBuilderGetQueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    
    @dataclass
    class PlansRequestBuilderPostRequestConfiguration(RequestConfiguration[QueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    

