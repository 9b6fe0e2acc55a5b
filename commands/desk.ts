import { clearCommand } from './desk/clear.ts';
import { publicCommand } from './desk/public.ts';
import { setCommand } from './desk/set.ts';
import { showCommand } from './desk/show.ts';

/** The settings of a server, for those who manage it. */
export const deskCommands = [showCommand, setCommand, publicCommand, clearCommand] as const;
