/**
 * Whether a form was sent from this site: the browser says where from, and the
 * session cookie alone would come along from anywhere the browser lets it.
 */
export function isSameOrigin(request: Request): boolean {
  const site = request.headers.get('sec-fetch-site')
  if (site) return site === 'same-origin'
  const origin = request.headers.get('origin')
  // A browser that must not say where a form came from says "null", which is no address.
  return origin !== null && URL.canParse(origin) && new URL(origin).host === request.headers.get('host')
}
