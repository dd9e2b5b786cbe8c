/** The document that a requirement brought by a lesson names, for people to read; its clause names the lesson. */
export const LESSONS_DOCUMENT = 'Lessons learnt'
