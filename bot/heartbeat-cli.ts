import { loadEnvFile, readConfig } from './config.ts';
import { heartbeatFile, isBeating } from './heartbeat.ts';

loadEnvFile();
process.exitCode = isBeating(heartbeatFile(readConfig(process.env).dataDir), Date.now()) ? 0 : 1;
