import type { Pages } from "./pages.js";
import type { operations } from "./schema.js";

/**
 * What a call looks like, derived from the contract: id, body and options as the operation takes them, and its answer.
 * `Replacing` names the operation that replaces the record answered, if there is one.
 */
export type Call<Id extends keyof operations, Replacing extends keyof operations | undefined = undefined> =
  "If-None-Match" extends keyof HeadersOf<Id>
    ? Reading<StoredOf<Id, Replacing>, OptionsOf<Id>>
    : (...given: [...IdOf<Id>, ...BodyArgument<Id>, ...OptionsArgument<Id>]) => Result<Id, Replacing>;

/** Traits of an operation that the client needs at run time. */
export interface Traits {
  readonly method: "get" | "post" | "put";
  readonly path: string;
  readonly takesId?: true;
  readonly takesBody?: true;
  readonly takesKey?: true;
  readonly givesPages?: true;
  readonly givesTag?: true;
  readonly givesEditable?: true;
}

/** A record and the entity tag of the revision that was read. */
export interface Stored<Record> {
  readonly record: Record;
  /** Send it back as `ifMatch` when you replace the record, or as `ifNoneMatch` when you read it again. */
  readonly etag: string;
  /** The record had been stored by an earlier, equal request. */
  readonly replayed: boolean;
}

/** A record that can be replaced. */
export interface Described<Record, Body> extends Stored<Record> {
  /** The record without what the service keeps itself: change it and send it back, `{ ...scale.editable, retired: true }`. */
  readonly editable: Body;
}

/** What every call takes. */
export interface CallOptions {
  /** Ends the call, its retries and its stream. */
  readonly signal?: AbortSignal | undefined;
}

/** Reads one record. */
export interface Reading<Answer, Options> {
  /** Reads one record, unless it is still the revision that you have; then the answer is undefined. */
  (id: string, options: Options & { readonly ifNoneMatch: string }): Promise<Answer | undefined>;
  (id: string, options?: Options): Promise<Answer>;
}

type OptionsOf<Id extends keyof operations> = CallOptions & QueryOptions<QueryOf<Id>> & HeaderOptions<HeadersOf<Id>>;

type OptionsArgument<Id extends keyof operations> =
  {} extends OptionsOf<Id> ? [options?: OptionsOf<Id>] : [options: OptionsOf<Id>];

// Pages are followed, so nobody handles a cursor; the number of items on a page is a number.
type QueryOptions<Query> = {
  readonly [Name in keyof Query as Exclude<Name, "cursor">]: Name extends "limit" ? number | undefined : Query[Name] | undefined;
};

type HeaderOptions<Headers> =
  ("Idempotency-Key" extends keyof Headers
    ? {
        /** A text of your own, the same for each attempt to store the same thing. The client makes one if you give none. */
        readonly idempotencyKey?: string | undefined;
      }
    : {})
  & ("If-Match" extends keyof Headers
    ? {
        /** The entity tag of the revision that you are changing. If somebody else changed it first, `VersionConflict` is thrown. */
        readonly ifMatch: string;
      }
    : {});

type Result<Id extends keyof operations, Replacing extends keyof operations | undefined> = "cursor" extends keyof QueryOf<Id>
  ? Pages<ItemOf<AnswerOf<Id>>>
  : SuccessOf<Id> extends { headers: { ETag: string } } ? Promise<StoredOf<Id, Replacing>> : Promise<AnswerOf<Id>>;

type StoredOf<Id extends keyof operations, Replacing extends keyof operations | undefined> =
  Replacing extends keyof operations ? Described<AnswerOf<Id>, BodyOf<Replacing>> : Stored<AnswerOf<Id>>;

type IdOf<Id extends keyof operations> = operations[Id]["parameters"] extends { path: { id: string } } ? [id: string] : [];

type BodyArgument<Id extends keyof operations> = [BodyOf<Id>] extends [never] ? [] : [body: BodyOf<Id>];

type BodyOf<Id extends keyof operations> =
  operations[Id] extends { requestBody: { content: { "application/json": infer Body } } } ? Body : never;

// What is newly stored can have more than what an equal request finds stored, such as the text of a key.
type SuccessOf<Id extends keyof operations> =
  operations[Id]["responses"] extends { 201: infer Created } ? Created : operations[Id]["responses"][200 & keyof operations[Id]["responses"]];

/** The JSON that an operation answers. */
export type AnswerOf<Id extends keyof operations> =
  SuccessOf<Id> extends { content: { "application/json": infer Answer } } ? Answer : never;

type ItemOf<Page> = Page extends { items: (infer Item)[] } ? Item : never;

type QueryOf<Id extends keyof operations> = Present<operations[Id]["parameters"] extends { query?: infer Query } ? Query : never>;

type HeadersOf<Id extends keyof operations> = Present<operations[Id]["parameters"] extends { header?: infer Headers } ? Headers : never>;

// An operation without parameters of a kind has `never` there, and `never` would have every name for a key.
type Present<Parameters> = [NonNullable<Parameters>] extends [never] ? {} : NonNullable<Parameters>;
