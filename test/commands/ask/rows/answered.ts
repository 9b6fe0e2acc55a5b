export { rowAnswer as answered } from './asked.ts';
