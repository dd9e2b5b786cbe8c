/** The three departments that settle a programme between them. */
export const DEPARTMENTS = ['design', 'production', 'quality'] as const
export type Department = (typeof DEPARTMENTS)[number]

/** How a department is called on screens and prints. */
export const DEPARTMENT_NAMES: Record<Department, string> = {
  design: 'Design engineering',
  production: 'Production',
  quality: 'Quality',
}
