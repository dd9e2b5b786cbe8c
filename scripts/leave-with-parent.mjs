/**
 * Loaded before the web server starts. When the program that started it is gone (killed, so that it could
 * not say good-bye), the channel between them closes, and the server ends too instead of holding its port.
 */
const LONGEST_GOODBYE_MS = 10_000

if (process.channel) {
  process.channel.unref()
  process.once('disconnect', () => {
    process.kill(process.pid, 'SIGTERM')
    setTimeout(() => process.exit(1), LONGEST_GOODBYE_MS).unref()
  })
}
