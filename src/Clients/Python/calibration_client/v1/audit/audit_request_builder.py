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
    from ...models.audit_item_page import AuditItemPage
    from ...models.problem import Problem
    from .get_order_query_parameter_type import GetOrderQueryParameterType
    from .refusals.refusals_request_builder import RefusalsRequestBuilder

class AuditRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/audit
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new AuditRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/audit{?action*,cursor*,from*,key*,limit*,order*,until*}", path_parameters)
    
    async def get(self,request_configuration: Optional[RequestConfiguration[AuditRequestBuilderGetQueryParameters]] = None) -> Optional[AuditItemPage]:
        """
        Whatever was stored or changed, and the first export of a list by a key in an hour; other reading is not listed. Entries are only ever added. Page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[AuditItemPage]
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
        from ...models.audit_item_page import AuditItemPage

        return await self.request_adapter.send_async(request_info, AuditItemPage, error_mapping)
    
    def to_get_request_information(self,request_configuration: Optional[RequestConfiguration[AuditRequestBuilderGetQueryParameters]] = None) -> RequestInformation:
        """
        Whatever was stored or changed, and the first export of a list by a key in an hour; other reading is not listed. Entries are only ever added. Page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: RequestInformation
        """
        request_info = RequestInformation(Method.GET, self.url_template, self.path_parameters)
        request_info.configure(request_configuration)
        request_info.headers.try_add("Accept", "application/json")
        return request_info
    
    def with_url(self,raw_url: str) -> AuditRequestBuilder:
        """
        Returns a request builder with the provided arbitrary URL. Using this method means any other path or query parameters are ignored.
        param raw_url: The raw URL to use for the request builder.
        Returns: AuditRequestBuilder
        """
        if raw_url is None:
            raise TypeError("raw_url cannot be null.")
        return AuditRequestBuilder(self.request_adapter, raw_url)
    
    @property
    def refusals(self) -> RefusalsRequestBuilder:
        """
        The refusals property
        """
        from .refusals.refusals_request_builder import RefusalsRequestBuilder

        return RefusalsRequestBuilder(self.request_adapter, self.path_parameters)
    
    @dataclass
    class AuditRequestBuilderGetQueryParameters():
        """
        Whatever was stored or changed, and the first export of a list by a key in an hour; other reading is not listed. Entries are only ever added. Page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
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
            if original_name == "action":
                return "action"
            if original_name == "cursor":
                return "cursor"
            if original_name == "key":
                return "key"
            if original_name == "limit":
                return "limit"
            if original_name == "order":
                return "order"
            if original_name == "until":
                return "until"
            return original_name
        
        # Only this operation, by its name in this contract.
        action: Optional[str] = None

        # Where to go on: the cursor of the previous page's next link.
        cursor: Optional[str] = None

        # What was done at or after this instant, RFC 3339.
        from_: Optional[datetime.datetime] = None

        # Only what was done with the key with this id.
        key: Optional[str] = None

        # Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
        limit: Optional[str] = None

        # newest-first (the default) or oldest-first.
        order: Optional[GetOrderQueryParameterType] = None

        # What was done before this instant, RFC 3339.
        until: Optional[datetime.datetime] = None

    
    @dataclass
    class AuditRequestBuilderGetRequestConfiguration(RequestConfiguration[AuditRequestBuilderGetQueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    

