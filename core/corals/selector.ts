import type { CoralEntry } from './entry.ts';
import type { CoralGroup, CoralTag } from './kind.ts';

/** Which corals a rule or an ally speaks of. */
export type Selector =
  | { readonly by: 'any' }
  | { readonly by: 'id'; readonly of: readonly string[] }
  | { readonly by: 'genus'; readonly of: readonly string[] }
  | { readonly by: 'tag'; readonly of: readonly CoralTag[] }
  | { readonly by: 'family'; readonly of: readonly string[] }
  | { readonly by: 'group'; readonly of: readonly CoralGroup[] };

export const anyCoral: Selector = { by: 'any' };
export const byId = (...of: string[]): Selector => ({ by: 'id', of });
export const byGenus = (...of: string[]): Selector => ({ by: 'genus', of });
export const byTag = (...of: CoralTag[]): Selector => ({ by: 'tag', of });
export const byFamily = (...of: string[]): Selector => ({ by: 'family', of });
export const byGroup = (...of: CoralGroup[]): Selector => ({ by: 'group', of });

/** Whether the selector speaks of this entry. An entry of several genera is meant by each of them. */
export function selects(selector: Selector, entry: CoralEntry): boolean {
  switch (selector.by) {
    case 'any':
      return true;
    case 'id':
      return selector.of.includes(entry.id);
    case 'genus':
      return entry.scientific.genera.some((genus) => selector.of.includes(genus));
    case 'tag':
      return entry.tags.some((tag) => selector.of.includes(tag));
    case 'family':
      return entry.family !== undefined && selector.of.includes(entry.family.name);
    case 'group':
      return selector.of.includes(entry.group);
  }
}

/** How narrow a selector is: a rule about one kind outranks a rule about a family or about anything. */
export function narrowness(selector: Selector): number {
  return ['any', 'group', 'family', 'tag', 'genus', 'id'].indexOf(selector.by);
}
