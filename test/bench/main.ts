import { cpus } from 'node:os';
import { benchAnswers, benchWords } from './answers.ts';
import { benchPicture } from './picture.ts';
import { benchDiscord, benchStart } from './processes.ts';
import { benchStore } from './store.ts';

console.log(`Node ${process.version}, ${cpus().length} processors, one process for each table`);
benchAnswers();
benchWords();
await benchPicture();
await benchStore();
await benchStart();
await benchDiscord();
