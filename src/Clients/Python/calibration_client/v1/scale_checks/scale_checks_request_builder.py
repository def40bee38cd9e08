from __future__ import annotations
import datetime
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
    from ...models.history_item_page import HistoryItemPage
    from ...models.problem import Problem
    from ...models.scale_check_answer import ScaleCheckAnswer
    from ...models.scale_check_request import ScaleCheckRequest
    from .get_order_query_parameter_type import GetOrderQueryParameterType
    from .get_units_query_parameter_type import GetUnitsQueryParameterType
    from .get_verdict_query_parameter_type import GetVerdictQueryParameterType
    from .item.scale_checks_item_request_builder import ScaleChecksItemRequestBuilder

class ScaleChecksRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/scale-checks
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new ScaleChecksRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/scale-checks{?cursor*,element*,from*,limit*,lot*,machine*,meter*,order*,plan*,product*,scale*,units*,until*,verdict*}", path_parameters)
    
    def by_id(self,id: str) -> ScaleChecksItemRequestBuilder:
        """
        Gets an item from the calibration_client.v1.scaleChecks.item collection
        param id: Id of the check.
        Returns: ScaleChecksItemRequestBuilder
        """
        if id is None:
            raise TypeError("id cannot be null.")
        from .item.scale_checks_item_request_builder import ScaleChecksItemRequestBuilder

        url_tpl_params = get_path_parameters(self.path_parameters)
        url_tpl_params["id"] = id
        return ScaleChecksItemRequestBuilder(self.request_adapter, url_tpl_params)
    
    async def get(self,request_configuration: Optional[RequestConfiguration[ScaleChecksRequestBuilderGetQueryParameters]] = None) -> Optional[HistoryItemPage]:
        """
        By the time when it happened, page by page; follow the next link, which stays true while others add records. Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[HistoryItemPage]
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
        from ...models.history_item_page import HistoryItemPage

        return await self.request_adapter.send_async(request_info, HistoryItemPage, error_mapping)
    
    async def post(self,body: ScaleCheckRequest, request_configuration: Optional[RequestConfiguration[QueryParameters]] = None) -> Optional[ScaleCheckAnswer]:
        """
        The span error found corrects later catch tests on that scale, and its uncertainty takes the place of the scale's limit.After a failed check, tests since the last good one say so when they are read. Send an Idempotency-Key, or your own id,to be able to repeat the request safely.
        param body: A check of a scale against known masses.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[ScaleCheckAnswer]
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
        from ...models.scale_check_answer import ScaleCheckAnswer

        return await self.request_adapter.send_async(request_info, ScaleCheckAnswer, error_mapping)
    
    def to_get_request_information(self,request_configuration: Optional[RequestConfiguration[ScaleChecksRequestBuilderGetQueryParameters]] = None) -> RequestInformation:
        """
        By the time when it happened, page by page; follow the next link, which stays true while others add records. Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: RequestInformation
        """
        request_info = RequestInformation(Method.GET, self.url_template, self.path_parameters)
        request_info.configure(request_configuration)
        request_info.headers.try_add("Accept", "application/json")
        return request_info
    
    def to_post_request_information(self,body: ScaleCheckRequest, request_configuration: Optional[RequestConfiguration[QueryParameters]] = None) -> RequestInformation:
        """
        The span error found corrects later catch tests on that scale, and its uncertainty takes the place of the scale's limit.After a failed check, tests since the last good one say so when they are read. Send an Idempotency-Key, or your own id,to be able to repeat the request safely.
        param body: A check of a scale against known masses.
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
    
    def with_url(self,raw_url: str) -> ScaleChecksRequestBuilder:
        """
        Returns a request builder with the provided arbitrary URL. Using this method means any other path or query parameters are ignored.
        param raw_url: The raw URL to use for the request builder.
        Returns: ScaleChecksRequestBuilder
        """
        if raw_url is None:
            raise TypeError("raw_url cannot be null.")
        return ScaleChecksRequestBuilder(self.request_adapter, raw_url)
    
    @dataclass
    class ScaleChecksRequestBuilderGetQueryParameters():
        """
        By the time when it happened, page by page; follow the next link, which stays true while others add records. Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.
        """
        def get_query_parameter(self,original_name: str) -> str:
            """
            Maps the query parameters names to their encoded names for the URI template parsing.
            param original_name: The original query parameter name in the class.
            Returns: str
            """
            if original_name is None:
                raise TypeError("original_name cannot be null.")
            if original_name == "from_":
                return "from"
            if original_name == "cursor":
                return "cursor"
            if original_name == "element":
                return "element"
            if original_name == "limit":
                return "limit"
            if original_name == "lot":
                return "lot"
            if original_name == "machine":
                return "machine"
            if original_name == "meter":
                return "meter"
            if original_name == "order":
                return "order"
            if original_name == "plan":
                return "plan"
            if original_name == "product":
                return "product"
            if original_name == "scale":
                return "scale"
            if original_name == "units":
                return "units"
            if original_name == "until":
                return "until"
            if original_name == "verdict":
                return "verdict"
            return original_name
        
        # Where to go on: the cursor of the previous page's next link.
        cursor: Optional[str] = None

        # Only this metering element.
        element: Optional[str] = None

        # What happened at or after this instant, RFC 3339.
        from_: Optional[datetime.datetime] = None

        # Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
        limit: Optional[str] = None

        # Only the lot with this id.
        lot: Optional[str] = None

        # Only the machine with this id.
        machine: Optional[str] = None

        # Only this position of a meter.
        meter: Optional[str] = None

        # newest-first (the default) or oldest-first, by the time when it happened.
        order: Optional[GetOrderQueryParameterType] = None

        # Only the plan with this id.
        plan: Optional[str] = None

        # Only the product with this id.
        product: Optional[str] = None

        # Only the scale with this id.
        scale: Optional[str] = None

        # Units of the answer; as-asked keeps what was entered.
        units: Optional[GetUnitsQueryParameterType] = None

        # What happened before this instant, RFC 3339.
        until: Optional[datetime.datetime] = None

        # Only this verdict: investigate, repeat, keep or adopt for tests, passed or failed for scale checks.
        verdict: Optional[GetVerdictQueryParameterType] = None

    
    @dataclass
    class ScaleChecksRequestBuilderGetRequestConfiguration(RequestConfiguration[ScaleChecksRequestBuilderGetQueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    
    @dataclass
    class ScaleChecksRequestBuilderPostRequestConfiguration(RequestConfiguration[QueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    

