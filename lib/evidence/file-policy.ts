/**
 * What a browser may do with evidence that it shows instead of saving: run nothing, load nothing, be in no frame.
 * Source: OWASP ASVS 5.0.0 V3.2.1 and V3.4.6; Content Security Policy Level 3, section 6.
 */
export const FILE_POLICY = "sandbox; default-src 'none'; frame-ancestors 'none'; base-uri 'none'"
