/** Words by which a keeper reports that something is wrong, whatever the numbers say; patterns of whole words. */
const TROUBLE = [
  String.raw`clos(?:ed|ing)(?: up)?`,
  String.raw`(?:not|won'?t|isn'?t|aren'?t|never) (?:open\w*|extend\w*|eat\w*|swim\w*|grow\w*)`,
  String.raw`(?:stopped|stop) (?:opening|eating|extending|growing|swimming)`,
  String.raw`retract\w*|shr(?:ink|ank|unk)\w*|shrivel\w*|deflat\w*`,
  String.raw`d(?:ie|ied|ies|ying|ead|eath|eaths)`,
  String.raw`los(?:t|ing|es) (?:colou?r|flesh|tissue|heads?|polyps?|a |my |all|some|fish|corals?)`,
  String.raw`reced\w*|recession|peel\w*|melt\w*|slough\w*|rot(?:s|ted|ting)?|bail\w*`,
  String.raw`bleach(?:ed|ing|es)?|pal(?:e|er|ing)|fad(?:ed|ing)|brown(?:ed|ing)? (?:out|up)|turn(?:ed|ing)? (?:brown|white|pale)|(?:gone|going|went) (?:brown|white|pale)`,
  String.raw`gasp\w*|breath(?:e|es|ing) (?:heav\w*|fast|hard)|lying (?:down|on)|flash(?:ing)?|scratch\w*|hiding|twitch\w*|clamp\w*`,
  String.raw`sick|ill|unwell|unhappy|upset|mad|pissed|stress(?:ed|ing)?|angry|struggl\w*|suffer\w*`,
  String.raw`slim(?:e|y|ing)|jelly|mucus|spots?|ich|velvet|fungus|swollen|bloat\w*|cloudy eyes?`,
  String.raw`cloudy|milky|smell\w*|stink\w*|foam\w*|film`,
  String.raw`algae|cyano|dinos?|diatoms?|aiptasia|flat ?worms?|pests?|bubbles everywhere`,
  String.raw`(?:something|anything|what)(?:'s| is)? wrong|look(?:s|ing)? (?:bad|rough|awful|terrible|off|weird|sad|like crap|ill|poor)|not (?:happy|doing (?:well|good|great)|looking (?:good|great|well|right|happy))|do(?:es)?n'?t look (?:good|right|well|happy|great)|problems?|trouble|crash\w*`,
] as const;
const FOUND = new RegExp(String.raw`(?<![a-z0-9])(?:${TROUBLE.join('|')})(?![a-z0-9])`);
/** "no algae", "nothing died": said to be absent. */
const ABSENT = /(?:\b(?:no|not|without|zero|never|none|nothing|free of|isn'?t|aren'?t)\s+(?:\w+\s+)?)$/;

/**
 * The first words of a cleaned text that report trouble, or undefined. Deliberately wide: its one use is to keep an
 * answer from calling things fine, where a word too many costs nothing.
 */
export function troubleIn(text: string): string | undefined {
  let from = 0;
  for (;;) {
    const match = FOUND.exec(text.slice(from));
    if (match === null) return undefined;
    const start = from + match.index;
    if (!ABSENT.test(text.slice(Math.max(0, start - 24), start))) return match[0];
    from = start + match[0].length;
  }
}
