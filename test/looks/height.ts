/** Pixels of a line of each sort, the width of a letter, and what stands around a message. An approximation of our own. */
const SIZES = { heading: [26, 9.6], small: [18, 6.4], plain: [22, 7.4], mono: [19, 8] } as const;
const PADDING_PX = 44;
const BUTTON_ROW_PX = 42;
const GAP_PX = 8;

/** The screen of a phone that a message is read on, px. */
export const SCREEN_PX = 640;

/** How high texts and rows of buttons stand at a width, px. */
export function heightOf(texts: readonly string[], buttonRows: number, widthPx: number): number {
  const heights = texts.map((text) => textHeight(text, widthPx - PADDING_PX));
  return heights.reduce((sum, height) => sum + height + GAP_PX, PADDING_PX) + buttonRows * BUTTON_ROW_PX;
}

function textHeight(text: string, roomPx: number): number {
  let isCode = false;
  return text.split('\n').reduce((sum, line) => {
    if (line === '```') {
      isCode = !isCode;
      return sum;
    }
    const [linePx, letterPx] = SIZES[isCode ? 'mono' : sortOf(line)];
    return sum + linePx * Math.max(1, Math.ceil((line.length * letterPx) / roomPx));
  }, 0);
}

function sortOf(line: string): keyof typeof SIZES {
  return line.startsWith('### ') ? 'heading' : line.startsWith('-# ') ? 'small' : 'plain';
}
