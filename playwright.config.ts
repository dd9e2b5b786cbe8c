import { defineConfig } from 'playwright/test'

/** Stories in a real browser against the whole app, started as its users start it. */
export default defineConfig({
  testDir: 'tests/browser',
  testMatch: '**/*.spec.ts',
  timeout: 120_000,
  expect: { timeout: 20_000 },
  /** Stories of different files keep to programmes of their own, or only look. */
  workers: 2,
  retries: 0,
  reporter: 'list',
  use: {
    actionTimeout: 20_000,
    navigationTimeout: 60_000,
    baseURL: process.env.LIQUIDUS_TEST_URL ?? 'http://127.0.0.1:3187',
    launchOptions: {
      ...(process.env.CHROMIUM_PATH ? { executablePath: process.env.CHROMIUM_PATH } : {}),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  webServer: process.env.LIQUIDUS_TEST_URL
    ? undefined
    : {
        command: 'rm -rf tests/.output/browser-data && npm start',
        url: 'http://127.0.0.1:3187/health',
        timeout: 600_000,
        gracefulShutdown: { signal: 'SIGTERM', timeout: 30_000 },
        env: {
          PORT: '3187',
          LIQUIDUS_DATA: 'tests/.output/browser-data',
          LIQUIDUS_DEMO: 'on',
          DATABASE_URL: '',
          // Who signed in when would stand between the stories.
          LOG_LEVEL: 'warn',
        },
      },
})
