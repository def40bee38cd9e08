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
    from ...models.key_answer import KeyAnswer
    from ...models.key_answer_page import KeyAnswerPage
    from ...models.key_request import KeyRequest
    from ...models.problem import Problem
    from .item.keys_item_request_builder import KeysItemRequestBuilder

class KeysRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/keys
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new KeysRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/keys{?cursor*,limit*}", path_parameters)
    
    def by_id(self,id: str) -> KeysItemRequestBuilder:
        """
        Gets an item from the calibration_client.v1.keys.item collection
        param id: Id of the key.
        Returns: KeysItemRequestBuilder
        """
        if id is None:
            raise TypeError("id cannot be null.")
        from .item.keys_item_request_builder import KeysItemRequestBuilder

        url_tpl_params = get_path_parameters(self.path_parameters)
        url_tpl_params["id"] = id
        return KeysItemRequestBuilder(self.request_adapter, url_tpl_params)
    
    async def get(self,request_configuration: Optional[RequestConfiguration[KeysRequestBuilderGetQueryParameters]] = None) -> Optional[KeyAnswerPage]:
        """
        Those that have ended too, in the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[KeyAnswerPage]
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
        from ...models.key_answer_page import KeyAnswerPage

        return await self.request_adapter.send_async(request_info, KeyAnswerPage, error_mapping)
    
    async def post(self,body: KeyRequest, request_configuration: Optional[RequestConfiguration[QueryParameters]] = None) -> Optional[KeyAnswer]:
        """
        The text of the key is in the answer once and is stored nowhere. If that answer is lost, revoke the key and make another.
        param body: A new key.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[KeyAnswer]
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
        from ...models.key_answer import KeyAnswer

        return await self.request_adapter.send_async(request_info, KeyAnswer, error_mapping)
    
    def to_get_request_information(self,request_configuration: Optional[RequestConfiguration[KeysRequestBuilderGetQueryParameters]] = None) -> RequestInformation:
        """
        Those that have ended too, in the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: RequestInformation
        """
        request_info = RequestInformation(Method.GET, self.url_template, self.path_parameters)
        request_info.configure(request_configuration)
        request_info.headers.try_add("Accept", "application/json")
        return request_info
    
    def to_post_request_information(self,body: KeyRequest, request_configuration: Optional[RequestConfiguration[QueryParameters]] = None) -> RequestInformation:
        """
        The text of the key is in the answer once and is stored nowhere. If that answer is lost, revoke the key and make another.
        param body: A new key.
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
    
    def with_url(self,raw_url: str) -> KeysRequestBuilder:
        """
        Returns a request builder with the provided arbitrary URL. Using this method means any other path or query parameters are ignored.
        param raw_url: The raw URL to use for the request builder.
        Returns: KeysRequestBuilder
        """
        if raw_url is None:
            raise TypeError("raw_url cannot be null.")
        return KeysRequestBuilder(self.request_adapter, raw_url)
    
    @dataclass
    class KeysRequestBuilderGetQueryParameters():
        """
        Those that have ended too, in the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
        """
        # Where to go on: the cursor of the previous page's next link.
        cursor: Optional[str] = None

        # Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.
        limit: Optional[str] = None

    
    @dataclass
    class KeysRequestBuilderGetRequestConfiguration(RequestConfiguration[KeysRequestBuilderGetQueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    
    @dataclass
    class KeysRequestBuilderPostRequestConfiguration(RequestConfiguration[QueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    

