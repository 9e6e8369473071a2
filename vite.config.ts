import { defineConfig } from 'vite';
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
});
