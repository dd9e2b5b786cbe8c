import { MS_PER_HOUR } from '@/shared/quantity/calendar'
/**
 * How long a password that an administrator gives is good for. OWASP ASVS 5.0.0 V6.4.1 asks for "a short period";
 * three days (common practice, no published source) reach over a weekend, from handing it over to the first sign-in.
 */
const ONE_TIME_PASSWORD_HOURS = 72

/** Until when a one-time password given now is good. */
export const oneTimePasswordUntil = (givenAt: Date | string): Date =>
  new Date(new Date(givenAt).getTime() + ONE_TIME_PASSWORD_HOURS * MS_PER_HOUR)

interface Holder {
  readonly mustChangePassword: boolean
  readonly oneTimePasswordUntil: Date | null
}

/** Whether the person's password is a one-time password whose time is over; one without a time is. */
export const oneTimePasswordIsOver = (
  { mustChangePassword, oneTimePasswordUntil: until }: Holder,
  now: Date,
): boolean => mustChangePassword && !(until && now <= until)
