/** The trade's plain groups. `mushroom` is a corallimorph; a stony mushroom coral is `large-polyp` (Fungiidae). */
export type CoralGroup = 'large-polyp' | 'small-polyp' | 'soft' | 'zoanthid' | 'mushroom' | 'anemone';

/**
 * Kinds the pair rules speak of that are no genus or family today. `faviid type` and `mussid type` are the families
 * as the older papers drew them (from memory); `fleshy soft coral` is the soft group without gorgonians and without
 * the two that build a hard skeleton.
 */
export type CoralTag =
  | 'torch'
  | 'hammer'
  | 'frogspawn'
  | 'octospawn'
  | 'chalice'
  | 'faviid type'
  | 'mussid type'
  | 'fleshy soft coral'
  | 'leather'
  | 'gorgonian'
  | 'walking anemone';
