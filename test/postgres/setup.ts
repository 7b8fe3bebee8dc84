/** One server for all of `npm run test:postgres` that does not break it. */
import type { TestProject } from 'vitest/node';
import { postgresServer } from './server.ts';

declare module 'vitest' {
  interface ProvidedContext {
    server: string;
  }
}

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const server = await postgresServer();
  project.provide('server', server.url);
  return () => server.close();
}
