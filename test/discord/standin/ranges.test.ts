import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RangeName, ranges, type Rule } from './limits.ts';
import { type Probe, startProbe, type Via } from './probe.ts';
import {
  button,
  chars,
  choice,
  command,
  commandOfText,
  embed,
  form,
  gallery,
  image,
  input,
  label,
  option,
  pick,
  plain,
  row,
  section,
  select,
  shown,
  times,
  words,
} from './samples.ts';

interface Case {
  readonly via: Via;
  readonly make: (size: number) => unknown;
  readonly files?: (size: number) => readonly Blob[];
  /** The least size to try; by default the range's own, with one less tried when that can be made. */
  readonly from?: number;
  /** Try one less than the minimum though it is 0: a number, not a count. */
  readonly signed?: boolean;
  /** Other rules a payload over the limit breaks as well. */
  readonly also?: readonly Rule[];
}

const message = (make: Case['make'], more: Partial<Case> = {}): Case => ({ via: 'message', make, ...more });
const oneCommand = (make: Case['make'], more: Partial<Case> = {}): Case => ({
  via: 'command',
  make,
  ...more,
});
const inModal = (make: Case['make'], more: Partial<Case> = {}): Case => ({ via: 'modal', make, ...more });
const withOption = (
  make: (size: number) => Readonly<Record<string, unknown>>,
  more: Partial<Case> = {},
): Case => oneCommand((n) => command({ options: [option(make(n))] }), more);
const blobs = (count: number, bytes = 1): readonly Blob[] =>
  times(count, () => new Blob([new Uint8Array(bytes)]));
const thumb = { type: 11, ...image() };

const cases: Readonly<Record<RangeName, Case>> = {
  'command.name': oneCommand((n) => command({ name: chars(n) })),
  'command.description': oneCommand((n) => command({ description: chars(n) })),
  'command.options': oneCommand((n) => command({ options: times(n, (i) => option({ name: `o${i}` })) })),
  'command.text': oneCommand(commandOfText, { from: 500 }),
  'command.count': { via: 'commands', make: (n) => times(n, (i) => command({ name: `c${i}` })) },
  'command.menus': { via: 'commands', make: (n) => times(n, (i) => ({ type: 2, name: `Menu ${i}` })) },
  'choice.count': withOption((n) => ({ choices: times(n, (i) => choice({ name: `n${i}` })) })),
  'choice.name': withOption((n) => ({ choices: [choice({ name: chars(n) })] })),
  'choice.value': withOption((n) => ({ choices: [choice({ value: chars(n) })] })),
  'option.minLength': withOption((n) => ({ min_length: n }), { signed: true }),
  'option.maxLength': withOption((n) => ({ max_length: n })),
  'autocomplete.choices': { via: 'choices', make: (n) => ({ choices: times(n, () => choice()) }) },
  'message.content': message((n) => ({ content: chars(n) }), { from: 1 }),
  'message.embeds': message((n) => ({ embeds: times(n, () => ({ title: 't' })) }), { from: 1 }),
  'message.files': message(() => ({}), { files: (n) => blobs(n), from: 1 }),
  'message.nonce': message((n) => ({ content: 'c', nonce: chars(n) })),
  'message.rows': message((n) => plain(...times(n, (i) => row(button({ custom_id: `b${i}` }))))),
  'message.stickers': message((n) => ({
    content: 'c',
    sticker_ids: times(n, (i) => `11000000000000009${10 + i}`),
  })),
  'mentions.ids': message((n) => ({
    content: 'c',
    allowed_mentions: { users: times(n, (i) => `1100000000000001${100 + i}`) },
  })),
  'file.description': message((n) => ({ attachments: [{ id: '0', description: chars(n) }] }), {
    files: () => blobs(1),
  }),
  'file.bytes': message(() => ({}), { files: (n) => blobs(1, n) }),
  'embed.title': message((n) => embed({ title: chars(n), description: 'd' })),
  'embed.description': message((n) => embed({ description: chars(n), title: 't' })),
  'embed.fields': message((n) => embed({ title: 't', fields: times(n, () => ({ name: 'n', value: 'v' })) })),
  'embed.fieldName': message((n) => embed({ fields: [{ name: chars(n), value: 'v' }] })),
  'embed.fieldValue': message((n) => embed({ fields: [{ name: 'n', value: chars(n) }] })),
  'embed.footer': message((n) => embed({ title: 't', footer: { text: chars(n) } })),
  'embed.author': message((n) => embed({ title: 't', author: { name: chars(n) } })),
  'embed.total': message(
    (n) => ({ embeds: [{ description: chars(Math.min(n, 3000)) }, { description: chars(n - 3000) }] }),
    { from: 1 },
  ),
  'component.total': message((n) => shown(...times(n, () => words('a'))), { from: 1 }),
  'component.text': message((n) => shown(words(chars(Math.ceil(n / 2))), words(chars(Math.floor(n / 2)))), {
    from: 2,
  }),
  'component.customId': message((n) => plain(row(button({ custom_id: chars(n) })))),
  'text.content': message((n) => shown(words(chars(n))), { also: ['component.text'] }),
  'row.buttons': message((n) => plain(row(...times(n, (i) => button({ custom_id: `b${i}` }))))),
  'button.label': message((n) => plain(row(button({ label: chars(n) })))),
  'button.url': message((n) => {
    const url = n < 20 ? chars(n) : `https://example.org/${chars(n - 20)}`;
    return plain(row({ type: 2, style: 5, label: 'l', url }));
  }),
  'select.options': message((n) =>
    plain(row(select({ options: times(n, (i) => pick({ value: `v${i}` })) }))),
  ),
  'select.placeholder': message((n) => plain(row(select({ placeholder: chars(n) })))),
  'select.minValues': message((n) => plain(row(select({ min_values: n }))), { signed: true }),
  'select.maxValues': message((n) => plain(row(select({ max_values: n })))),
  'selectOption.label': message((n) => plain(row(select({ options: [pick({ label: chars(n) })] })))),
  'selectOption.value': message((n) => plain(row(select({ options: [pick({ value: chars(n) })] })))),
  'selectOption.description': message((n) =>
    plain(row(select({ options: [pick({ description: chars(n) })] }))),
  ),
  'gallery.items': message((n) => shown(gallery(...times(n, () => image())))),
  'media.description': message((n) => shown(gallery(image({ description: chars(n) })))),
  'section.texts': message((n) => shown(section(thumb, ...times(n, () => words('a'))))),
  'container.accent': message((n) => shown({ type: 17, accent_color: n, components: [words('a')] }), {
    signed: true,
  }),
  'history.limit': { via: 'history', make: (n) => n },
  'modal.title': inModal((n) => form([label(input())], { title: chars(n) })),
  'modal.components': inModal((n) => form(times(n, (i) => label(input({ custom_id: `i${i}` }))))),
  'label.text': inModal((n) => form([label(input(), { label: chars(n) })])),
  'label.description': inModal((n) => form([label(input(), { description: chars(n) })])),
  'input.label': inModal((n) => form([row(input({ label: chars(n) }))])),
  'input.placeholder': inModal((n) => form([label(input({ placeholder: chars(n) }))])),
  'input.minLength': inModal((n) => form([label(input({ min_length: n }))]), { signed: true }),
  'input.maxLength': inModal((n) => form([label(input({ max_length: n }))])),
  'input.value': inModal((n) => form([label(input({ value: chars(n) }))])),
};

let probe: Probe;
beforeAll(async () => {
  probe = await startProbe();
});
afterAll(() => probe.close());

describe.each(Object.entries(cases))('%s', (name, { via, make, files, from, signed, also = [] }) => {
  const rule = name as RangeName;
  const { min, max } = ranges[rule];
  const send = (size: number): ReturnType<Probe['send']> => probe.send(via, make(size), files?.(size));

  it.each([from ?? min, max])('takes %i', async (size) => {
    const verdict = await send(size);
    expect(verdict.rules).toEqual([]);
    expect(verdict.status).toBeLessThan(300);
  });

  const below = signed === true || (min > 0 && from === undefined) ? [min - 1] : [];
  it.each([...below, max + 1])('refuses %i', async (size) => {
    const verdict = await send(size);
    expect(verdict).toMatchObject({ status: 400, code: 50035 });
    expect(verdict.rules).toContain(rule);
    expect([rule, ...also]).toEqual(expect.arrayContaining([...verdict.rules]));
  });
});

const container = (children: number): unknown =>
  shown({ type: 17, components: times(children, () => words('a')) });
const pictured = (sections: number): unknown => shown(...times(sections, () => section(thumb, words('a'))));

describe('components inside components', () => {
  it('counts a container and its children: 1 + 39, not 1 + 40', async () => {
    expect((await probe.send('message', container(39))).rules).toEqual([]);
    expect((await probe.send('message', container(40))).rules).toEqual(['component.total']);
  });

  it('counts a section, its text and its accessory: 3 x 13, not 3 x 14', async () => {
    expect((await probe.send('message', pictured(13))).rules).toEqual([]);
    expect((await probe.send('message', pictured(14))).rules).toEqual(['component.total']);
  });
});
