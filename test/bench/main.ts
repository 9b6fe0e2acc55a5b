import { cpus } from 'node:os';
import { benchAnswers, benchWords } from './answers.ts';
import { benchBurst } from './burst.ts';
import { benchPicture } from './picture.ts';
import { benchDiscord, benchStart } from './processes.ts';
import { benchReminders } from './reminders.ts';
import { benchStore } from './store.ts';

console.log(`Node ${process.version}, ${cpus().length} processors, one process for each table`);
benchAnswers();
benchWords();
await benchPicture();
await benchStore();
benchReminders();
await benchStart();
await benchDiscord();
await benchBurst();
