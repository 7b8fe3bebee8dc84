/** An alias ("*name") that names nothing, which YAML parses but cannot be turned into a value. */
import { type Document, visit } from 'yaml';

/** The offset of the first alias without its anchor, or undefined when every alias has one. */
export function danglingAlias(document: Document): number | undefined {
  let offset: number | undefined;
  visit(document, {
    Alias(_, node) {
      if (node.resolve(document) !== undefined) return undefined;
      offset = node.range?.[0] ?? 0;
      return visit.BREAK;
    },
  });
  return offset;
}
