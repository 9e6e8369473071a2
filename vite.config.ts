import { defineConfig } from 'vitest/config';
import { offline, SERVICE_WORKER } from './src/offline/build-plugin.ts';
import { licences } from './src/offline/licences-plugin.ts';

export default defineConfig({
  base: './',
  plugins: [licences(), offline()],
  build: {
    target: 'es2022',
    outDir: 'dist/app',
    chunkSizeWarningLimit: 1200,
    rolldownOptions: {
      input: { index: 'index.html', 'service-worker': 'src/offline/service-worker.ts' },
      output: {
        entryFileNames: ({ name }) => (name === 'service-worker' ? SERVICE_WORKER : 'assets/[name]-[hash].js'),
      },
    },
  },
  worker: { format: 'es' },
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 20_000,
    // A busy machine answers later, never otherwise.
    expect: { poll: { timeout: 5_000 } },
    // Half of the time goes into waiting for a browser, so both of two cores are kept busy.
    maxWorkers: 2,
  },
});
