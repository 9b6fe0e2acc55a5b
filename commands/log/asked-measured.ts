import { Problem } from '../../core/problem.ts';
import { findParameter, parameter, parameterIds, type ParameterId } from '../../core/water/parameter.ts';
import { say } from '../../core/wording/say.ts';

/** What the option `of` names, salinity included. @throws Problem with everything that can be logged. */
export function askedMeasured(text: string): ParameterId {
  const id = findParameter(text);
  if (id !== undefined) return id;
  throw new Problem(say('log.iDoNotLog', { text }), {
    field: 'of',
    given: text,
    limit: parameterIds.map((known) => parameter(known).label).join(', '),
  });
}
