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
    from ...models.adoption_answer import AdoptionAnswer
    from ...models.adoption_request import AdoptionRequest
    from ...models.history_item_page import HistoryItemPage
    from ...models.problem import Problem
    from .get_order_query_parameter_type import GetOrderQueryParameterType
    from .get_units_query_parameter_type import GetUnitsQueryParameterType
    from .get_verdict_query_parameter_type import GetVerdictQueryParameterType
    from .item.adoptions_item_request_builder import AdoptionsItemRequestBuilder

class AdoptionsRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/adoptions
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new AdoptionsRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/adoptions{?cursor*,element*,from*,limit*,lot*,machine*,meter*,order*,plan*,product*,scale*,units*,until*,verdict*}", path_parameters)
    
    def by_id(self,id: str) -> AdoptionsItemRequestBuilder:
        """
        Gets an item from the calibration_client.v1.adoptions.item collection
        param id: Id of the adoption.
        Returns: AdoptionsItemRequestBuilder
        """
        if id is None:
            raise TypeError("id cannot be null.")
        from .item.adoptions_item_request_builder import AdoptionsItemRequestBuilder

        url_tpl_params = get_path_parameters(self.path_parameters)
        url_tpl_params["id"] = id
        return AdoptionsItemRequestBuilder(self.request_adapter, url_tpl_params)
    
    async def get(self,request_configuration: Optional[RequestConfiguration[AdoptionsRequestBuilderGetQueryParameters]] = None) -> Optional[HistoryItemPage]:
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
    
    async def post(self,body: AdoptionRequest, request_configuration: Optional[RequestConfiguration[QueryParameters]] = None) -> Optional[AdoptionAnswer]:
        """
        From its time on, the value is in force for its meter, element, setting and product, until a later one is adopted. Thenumber is stored as typed in. Of two values adopted for the same time the one received last is in force; both stay onrecord. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
        param body: A value that was typed into a controller: who, why, from which test or stated by hand.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[AdoptionAnswer]
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
        from ...models.adoption_answer import AdoptionAnswer

        return await self.request_adapter.send_async(request_info, AdoptionAnswer, error_mapping)
    
    def to_get_request_information(self,request_configuration: Optional[RequestConfiguration[AdoptionsRequestBuilderGetQueryParameters]] = None) -> RequestInformation:
        """
        By the time when it happened, page by page; follow the next link, which stays true while others add records. Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: RequestInformation
        """
        request_info = RequestInformation(Method.GET, self.url_template, self.path_parameters)
        request_info.configure(request_configuration)
        request_info.headers.try_add("Accept", "application/json")
        return request_info
    
    def to_post_request_information(self,body: AdoptionRequest, request_configuration: Optional[RequestConfiguration[QueryParameters]] = None) -> RequestInformation:
        """
        From its time on, the value is in force for its meter, element, setting and product, until a later one is adopted. Thenumber is stored as typed in. Of two values adopted for the same time the one received last is in force; both stay onrecord. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
        param body: A value that was typed into a controller: who, why, from which test or stated by hand.
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
    
    def with_url(self,raw_url: str) -> AdoptionsRequestBuilder:
        """
        Returns a request builder with the provided arbitrary URL. Using this method means any other path or query parameters are ignored.
        param raw_url: The raw URL to use for the request builder.
        Returns: AdoptionsRequestBuilder
        """
        if raw_url is None:
            raise TypeError("raw_url cannot be null.")
        return AdoptionsRequestBuilder(self.request_adapter, raw_url)
    
    @dataclass
    class AdoptionsRequestBuilderGetQueryParameters():
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
    class AdoptionsRequestBuilderGetRequestConfiguration(RequestConfiguration[AdoptionsRequestBuilderGetQueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    
    @dataclass
    class AdoptionsRequestBuilderPostRequestConfiguration(RequestConfiguration[QueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    

