import { cpus } from 'node:os';
import { benchAnswers, benchWords } from './answers.ts';
import { benchDiscord, benchStart } from './processes.ts';

console.log(`Node ${process.version}, ${cpus().length} processors, one process for each table`);
benchAnswers();
benchWords();
await benchStart();
await benchDiscord();
