import { expect, it } from 'vitest';
import { isRoomShut } from '../../../core/language/room-shut.ts';
import { scan } from '../../../core/language/tokens.ts';

it.each([
  ['ph down since the windows been shut for winter', true],
  ['7.7 since we closed the hatches', true],
  ['new double glazing and the house is airtight', true],
  ['the hammer is closed and ph is 7.8', false],
  ['windows open all summer', false],
])('%s', (text, isShut) => expect(isRoomShut(scan(text))).toBe(isShut));
