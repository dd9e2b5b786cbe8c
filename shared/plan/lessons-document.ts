/** The document that a requirement brought by a lesson names; its clause is the lesson. The installation keeps it itself. */
export const LESSONS_DOCUMENT = 'Lessons learnt'
