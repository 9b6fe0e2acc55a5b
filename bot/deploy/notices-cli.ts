import { noticesOf, noticesText } from './notices.ts';

process.stdout.write(noticesText(noticesOf(process.cwd())));
