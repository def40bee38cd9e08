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
    from ....models.refusal_item_page import RefusalItemPage
    from .without_key.without_key_request_builder import WithoutKeyRequestBuilder

class RefusalsRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/audit/refusals
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new RefusalsRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/audit/refusals{?cursor*,limit*}", path_parameters)
    
    async def get(self,request_configuration: Optional[RequestConfiguration[RefusalsRequestBuilderGetQueryParameters]] = None) -> Optional[RefusalItemPage]:
        """
        By day, page by page; follow the next link. Counted and not listed one by one, so that nobody fills the disk by being turned away; kept for 400 days.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[RefusalItemPage]
        """
        request_info = self.to_get_request_information(
            request_configuration
        )
        from ....models.problem import Problem

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
        from ....models.refusal_item_page import RefusalItemPage

        return await self.request_adapter.send_async(request_info, RefusalItemPage, error_mapping)
    
    def to_get_request_information(self,request_configuration: Optional[RequestConfiguration[RefusalsRequestBuilderGetQueryParameters]] = None) -> RequestInformation:
        """
        By day, page by page; follow the next link. Counted and not listed one by one, so that nobody fills the disk by being turned away; kept for 400 days.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: RequestInformation
        """
        request_info = RequestInformation(Method.GET, self.url_template, self.path_parameters)
        request_info.configure(request_configuration)
        request_info.headers.try_add("Accept", "application/json")
        return request_info
    
    def with_url(self,raw_url: str) -> RefusalsRequestBuilder:
        """
        Returns a request builder with the provided arbitrary URL. Using this method means any other path or query parameters are ignored.
        param raw_url: The raw URL to use for the request builder.
        Returns: RefusalsRequestBuilder
        """
        if raw_url is None:
            raise TypeError("raw_url cannot be null.")
        return RefusalsRequestBuilder(self.request_adapter, raw_url)
    
    @property
    def without_key(self) -> WithoutKeyRequestBuilder:
        """
        The withoutKey property
        """
        from .without_key.without_key_request_builder import WithoutKeyRequestBuilder

        return WithoutKeyRequestBuilder(self.request_adapter, self.path_parameters)
    
    @dataclass
    class RefusalsRequestBuilderGetQueryParameters():
        """
        By day, page by page; follow the next link. Counted and not listed one by one, so that nobody fills the disk by being turned away; kept for 400 days.
        """
        # Where to go on: the cursor of the previous page's next link.
        cursor: Optional[str] = None

        # Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
        limit: Optional[str] = None

    
    @dataclass
    class RefusalsRequestBuilderGetRequestConfiguration(RequestConfiguration[RefusalsRequestBuilderGetQueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    

