/**
 * Shows the caller's key to the service at `address`, and to nobody else: a request made by way of `http` can be meant for
 * another address. On the way to another origin, where a redirection may lead, the platform leaves the header behind.
 */
export function keyShower(address: string, key: string | undefined): (request: Request) => void {
  if (key === undefined)
    return () => undefined;
  // Left to the header, a key read with the line break behind it would stand in the message of an error.
  if (!/^[!-~]+$/.test(key))
    throw new TypeError("The key is empty, or holds a space, a line break or another letter that no key has. Check that it was read whole and without what stands around it.");
  // In a page an address may be relative to it.
  const service = new URL(`${address}/`, globalThis.location?.href).href;
  return request => {
    if (request.url.startsWith(service) && !request.headers.has("Authorization"))
      request.headers.set("Authorization", `Bearer ${key}`);
  };
}
