import { writeFileSync } from 'node:fs';
import { look } from './drawn.ts';
import { typical } from './typical.ts';

const WIDTHS_PX = [380, 480] as const;
const FILE = 'looks.html';

const style = `
body { background: #101418; color: #d8dde2; font: 15px/1.4 sans-serif; display: flex; gap: 32px; }
.phone { border: 1px solid #39424b; padding: 8px; }
.typed { color: #8fa1b3; margin: 20px 4px 6px; }
.message { border-left: 4px solid; background: #1b2127; border-radius: 6px; padding: 8px 12px; }
h3 { font-size: 17px; margin: 2px 0 6px; } p { margin: 2px 0; }
.item { padding-left: 20px; position: relative; } .item span { position: absolute; left: 2px; }
.small { font-size: 12px; color: #9aa7b3; } hr { border: 0; border-top: 1px solid #39424b; }
pre { background: #101418; padding: 6px; overflow-x: auto; font-size: 13px; }
.row { display: flex; flex-wrap: wrap; gap: 6px; margin-top: 8px; }
.button { background: #39424b; border-radius: 5px; padding: 6px 10px; font-size: 13px; }`;

const looks = typical.map(look);
const phones = WIDTHS_PX.map((widthPx) => {
  const messages = looks.map(({ typed, html }) => `<p class="typed">${typed}</p>${html}`);
  return `<div class="phone" style="width:${widthPx}px">${messages.join('')}</div>`;
});
writeFileSync(FILE, `<!doctype html><meta charset="utf-8"><style>${style}</style>${phones.join('')}`);

console.log(`${FILE}: ${looks.length} answers at ${WIDTHS_PX.join(' and ')} px`);
console.log(['screens', '', 'characters', 'typed'].join('\t'));
for (const { typed, characters, screensAt } of looks) {
  const screens = WIDTHS_PX.map((widthPx) => screensAt(widthPx).toFixed(2));
  console.log([...screens, characters, typed.slice(0, 60)].join('\t'));
}
