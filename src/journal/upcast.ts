/**
 * Brings facts written by an earlier version of this program up to today's shape. The only place
 * that knows how a fact used to look.
 */
import type { FactType } from '../kitchen/facts.ts';

/** What a fact's body was before its type was checked. */
export type OldBody = Readonly<Record<string, unknown>>;

/** Lifts a body of one version to the next: the entry under 1 makes a body of version 2. */
export type Upcasters = {
  readonly [T in FactType]?: { readonly [version: number]: (body: OldBody) => OldBody };
};

/**
 * Every shape there ever was and no longer is. No fact has changed its shape yet; when one does,
 * `factVersion` rises and its lift stands here, with a sample of the old shape in the tests.
 */
export const upcasters: Upcasters = {};

/** Lifts a body from the version it was written in to the newest, one version at a time. */
export function upcast(options: {
  type: FactType;
  version: number;
  body: OldBody;
  newest: number;
  upcasters: Upcasters;
}): OldBody {
  const lifts = options.upcasters[options.type] ?? {};
  let body = options.body;
  for (let version = options.version; version < options.newest; version += 1) {
    // A type whose shape stayed the same between two versions needs no lift.
    body = lifts[version]?.(body) ?? body;
  }
  return body;
}
