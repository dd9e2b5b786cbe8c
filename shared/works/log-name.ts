/**
 * What a log is called where logs of several trails stand beside each other. One opened at the works has its code; one
 * that was recorded in a programme before machines had logs is told apart by that programme, except in the programme itself.
 */
export const logName = (
  code: string,
  recordedIn: { readonly kind: string; readonly code: string },
  programme?: string,
): string =>
  recordedIn.kind === 'programme' && recordedIn.code !== programme ? `${code} · ${recordedIn.code}` : code
