/** Whether a text is the code of a currency in use, by ISO 4217, such as EUR; as far as the platform's Unicode CLDR data know. */
export const isCurrency = (code: string): boolean => Intl.supportedValuesOf('currency').includes(code)
