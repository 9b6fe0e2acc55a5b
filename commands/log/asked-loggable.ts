import { findLoggable } from '../../core/log/value.ts';
import { Problem } from '../../core/problem.ts';
import { loggable, loggableIds, type LoggableId } from '../../core/water/loggable.ts';

/** What the option `of` names, salinity included. @throws Problem with everything that can be logged. */
export function askedLoggable(text: string): LoggableId {
  const id = findLoggable(text);
  if (id !== undefined) return id;
  throw new Problem(`I do not log "${text}".`, {
    field: 'of',
    given: text,
    limit: loggableIds.map((known) => loggable(known).label).join(', '),
  });
}
