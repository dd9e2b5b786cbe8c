/**
 * Loaded before the web server starts. When the program that started it is gone (killed, so that it could
 * not say good-bye), the channel between them closes, and the server ends too instead of holding its port.
 * Programs that the server starts in turn load this as well; they have a parent of their own to look to.
 */
const LONGEST_GOODBYE_MS = 10_000

if (process.channel && process.ppid === Number(process.env.LIQUIDUS_STARTED_BY)) {
  process.channel.unref()
  process.once('disconnect', () => {
    process.kill(process.pid, 'SIGTERM')
    setTimeout(() => process.exit(1), LONGEST_GOODBYE_MS).unref()
  })
}
