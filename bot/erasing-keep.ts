import type { Keep } from '../commands/keep.ts';

/** The same keep; where everything is erased, what is only remembered is forgotten too. */
export function erasingKeep(keep: Keep, forget: () => void): Keep {
  return {
    ...keep,
    eraseAll: () => {
      keep.eraseAll();
      forget();
    },
  };
}
