import { absent, isRecord, type Json, list, record, text, whole } from './json.ts';
import { commandNamePattern } from './limits.ts';
import { listWithin, numberWithin, type Spot, textWithin, within } from './spot.ts';

const chat = 1;
const group = 2;
const nested = new Set([1, 2]);
const withChoices = new Set([3, 4, 10]);
const numeric = new Set([4, 10]);
const stringKind = 3;
const integerKind = 4;

/** Checks one application command as the API takes it. */
export function checkCommand(here: Spot, value: unknown): void {
  if (!isRecord(value)) return here.fail('type', 'Must be an object');
  if ((value['type'] ?? chat) === chat) {
    checkName(here, value['name']);
    textWithin(here.at('description'), value['description'], 'command.description', true);
    checkOptions(here, value, 0);
  } else checkMenu(here, value);
  checkReach(here, value);
  within(here, textSize(value), 'command.text');
}

/** Checks a whole list that replaces the commands of one scope. */
export function checkCommandList(here: Spot, value: unknown): void {
  if (!Array.isArray(value)) return here.fail('type', 'Must be a list');
  const commands = value.map(record);
  commands.forEach((command, index) => checkCommand(here.at(index), command));
  checkScope(here, commands);
}

/** Checks what the commands of one scope must be together: not too many, no name twice. */
export function checkScope(here: Spot, commands: readonly Json[]): void {
  const kinds = commands.map((command) => whole(command['type'] ?? chat));
  const count = (kind: number): number => kinds.filter((each) => each === kind).length;
  within(here, count(chat), 'command.count');
  for (const kind of [2, 3]) within(here, count(kind), 'command.menus');
  unique(
    here,
    commands.map((command, index) => `${kinds[index]} ${text(command['name'])}`),
  );
}

function checkName(here: Spot, name: unknown): void {
  const at = here.at('name');
  textWithin(at, name, 'command.name', true);
  if (typeof name !== 'string' || name.length < 1 || name.length > 32) return;
  if (!commandNamePattern.test(name) || name !== name.toLowerCase()) {
    at.fail('command.pattern', `"${name}" is not a lower-case name of letters, digits, - and _`);
  }
}

function checkMenu(here: Spot, menu: Json): void {
  if (menu['type'] !== 2 && menu['type'] !== 3) here.at('type').fail('command.shape', 'Unknown command type');
  textWithin(here.at('name'), menu['name'], 'command.name', true);
  if (text(menu['description']) !== '') here.fail('command.shape', 'A context menu has no description');
  if (list(menu['options']).length > 0) here.fail('command.shape', 'A context menu has no options');
}

function checkReach(here: Spot, command: Json): void {
  const allowed: readonly [string, number][] = [
    ['contexts', 2],
    ['integration_types', 1],
  ];
  for (const [key, highest] of allowed) {
    for (const value of list(command[key])) {
      if (typeof value !== 'number' || value < 0 || value > highest) {
        here.at(key).fail('command.shape', `Unknown value ${String(value)}`);
      }
    }
  }
  const permissions = command['default_member_permissions'];
  if (!absent(permissions) && !/^\d+$/.test(text(permissions))) {
    here.at('default_member_permissions').fail('type', 'Must be a bit set as text');
  }
}

function checkOptions(here: Spot, owner: Json, depth: number): void {
  const options = listWithin(here, owner, 'options', 'command.options').map(record);
  const kinds = options.map((option) => whole(option['type']));
  if (kinds.some((kind) => nested.has(kind)) && !kinds.every((kind) => nested.has(kind))) {
    here.at('options').fail('command.shape', 'Subcommands and plain options do not mix');
  }
  let optionalSeen = false;
  options.forEach((option, index) => {
    const at = here.at('options', index);
    checkOption(at, option, depth);
    if (option['required'] !== true) optionalSeen = true;
    else if (optionalSeen) at.fail('command.requiredFirst', 'Required options come before optional ones');
  });
  unique(
    here.at('options'),
    options.map((option) => text(option['name'])),
  );
}

function checkOption(here: Spot, option: Json, depth: number): void {
  const kind = whole(option['type']);
  if (kind < 1 || kind > 11) here.at('type').fail('command.shape', 'Unknown option type');
  checkName(here, option['name']);
  textWithin(here.at('description'), option['description'], 'command.description', true);
  if (nested.has(kind)) {
    const allowed = depth === 0 || (depth === 1 && kind !== group);
    if (!allowed) here.fail('command.shape', 'Subcommands are nested too deep');
    else checkOptions(here, option, kind === group ? 1 : 2);
    return;
  }
  if (list(option['options']).length > 0) here.fail('command.shape', 'Only subcommands have options');
  checkChannelTypes(here, option, kind);
  checkChoices(here, option, kind);
  checkBounds(here, option, kind);
}

const channelKind = 7;
/** Types of channels that a server has: text, voice, category, news, threads, stage, directory, forum, media. */
const channelTypes = new Set([0, 2, 4, 5, 10, 11, 12, 13, 14, 15, 16]);

function checkChannelTypes(here: Spot, option: Json, kind: number): void {
  if (absent(option['channel_types'])) return;
  const types = list(option['channel_types']);
  const known =
    Array.isArray(option['channel_types']) && types.every((type) => channelTypes.has(whole(type)));
  if (kind !== channelKind || !known) here.at('channel_types').fail('command.shape', 'Unknown channel types');
}

function checkChoices(here: Spot, option: Json, kind: number): void {
  const choices = listWithin(here, option, 'choices', 'choice.count').map(record);
  if (choices.length > 0 && !withChoices.has(kind)) here.fail('command.shape', 'This type has no choices');
  if (option['autocomplete'] === true && (choices.length > 0 || !withChoices.has(kind))) {
    here.fail('command.shape', 'Autocomplete excludes choices and needs text or a number');
  }
  choices.forEach((choice, index) => checkChoice(here.at('choices', index), choice, kind));
  unique(
    here.at('choices'),
    choices.map((choice) => text(choice['name'])),
  );
}

/** A choice of a command or of an autocomplete answer, for an option of this type. */
export function checkChoice(here: Spot, choice: Json, kind: number): void {
  textWithin(here.at('name'), choice['name'], 'choice.name', true);
  const value = choice['value'];
  if (kind === stringKind && typeof value === 'string') {
    return textWithin(here.at('value'), value, 'choice.value');
  }
  const fits = kind === integerKind ? Number.isSafeInteger(value) : typeof value === 'number';
  if (kind === stringKind || !fits) here.at('value').fail('choice.type', 'The value does not fit the option');
}

function checkBounds(here: Spot, option: Json, kind: number): void {
  const has = (key: string): boolean => !absent(option[key]);
  if ((has('min_value') || has('max_value')) && !numeric.has(kind)) {
    here.fail('command.shape', 'Only numbers have bounds');
  }
  if ((has('min_length') || has('max_length')) && kind !== stringKind) {
    here.fail('command.shape', 'Only text has lengths');
  }
  numberWithin(here.at('min_length'), option['min_length'], 'option.minLength');
  numberWithin(here.at('max_length'), option['max_length'], 'option.maxLength');
}

function unique(here: Spot, names: readonly string[]): void {
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  if (twice !== undefined) here.fail('command.duplicate', `"${twice}" is there twice`);
}

/** Characters in the names, descriptions and text values of a command, its options and choices. */
function textSize(node: Json): number {
  const own = text(node['name']).length + text(node['description']).length + text(node['value']).length;
  const below = [...list(node['options']), ...list(node['choices'])].map(record);
  return below.reduce((sum, child) => sum + textSize(child), own);
}
