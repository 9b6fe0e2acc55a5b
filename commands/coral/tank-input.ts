import type { Keep, Tank } from '../keep.ts';
import { textOption } from '../options.ts';

export function tankOption() {
  return textOption('Which of your tanks; the one in use where not said', { suggest: 'tank' }).optional();
}

/** What a next command needs to find the same tank: nothing for the one in use. */
export function tankInput(keep: Keep, tank: Tank): { readonly tank?: string } {
  return keep.tankInUse()?.id === tank.id ? {} : { tank: tank.name };
}
