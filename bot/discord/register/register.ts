import { loadEnvFile } from '../../config.ts';
import { registerCli } from './register-cli.ts';

loadEnvFile();
process.exitCode = await registerCli(process.argv.slice(2), process.env, {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
});
