/** A list: iterate over it, and its pages are fetched as they are needed. */
export class Pages<Item> implements AsyncIterable<Item> {
  readonly #read: (cursor: string | undefined) => Promise<Page<Item>>;

  /** @param read Reads the page at a cursor, the first page without one. */
  constructor(read: (cursor: string | undefined) => Promise<Page<Item>>) {
    this.#read = read;
  }

  async *[Symbol.asyncIterator](): AsyncGenerator<Item, void, undefined> {
    for await (const items of this.pages())
      yield* items;
  }

  /** The items page by page. */
  async *pages(): AsyncGenerator<Item[], void, undefined> {
    let cursor: string | undefined;
    do {
      const page = await this.#read(cursor);
      yield page.items;
      cursor = page.next === undefined ? undefined : cursorOf(page.next);
    } while (cursor !== undefined);
  }

  /** Every item, in one array. */
  async all(): Promise<Item[]> {
    const items: Item[] = [];
    for await (const page of this.pages())
      items.push(...page);
    return items;
  }
}

/** A page as the service answers it. */
export interface Page<Item> {
  readonly items: Item[];
  readonly next?: string;
}

// Only the cursor of the address is used: behind a proxy the service may know itself by another name than its callers.
function cursorOf(next: string): string | undefined {
  return new URL(next).searchParams.get("cursor") ?? undefined;
}
