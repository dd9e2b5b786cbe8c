declare module 'oidc-provider' {
  import type { RequestListener } from 'node:http'

  /** As much of the identity provider as the sign-in test needs. */
  export default class Provider {
    constructor(issuer: string, configuration: object)
    callback(): RequestListener
  }
}
