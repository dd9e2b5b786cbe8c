import { describe, expect, test } from 'vitest'
import { clientAddress, originOf } from '@/lib/auth/origin'

// Addresses of RFC 5737 and RFC 3849, which are for examples.
describe('the address a request came from', () => {
  test.each([
    ['203.0.113.9', 0, '203.0.113.9'],
    ['whatever a browser writes, 198.51.100.1, 203.0.113.9', 0, '203.0.113.9'],
    ['198.51.100.7, 203.0.113.9', 1, '198.51.100.7'],
    ['forged, 192.0.2.66, 198.51.100.7, 203.0.113.9', 1, '198.51.100.7'],
    ['forged, 192.0.2.66, 198.51.100.7, 203.0.113.9', 2, '192.0.2.66'],
    ['203.0.113.9', 1, '203.0.113.9'],
    ['198.51.100.7:51820, 203.0.113.9', 1, '198.51.100.7'],
    ['[2001:db8::7]:443, 203.0.113.9', 1, '2001:db8::7'],
    ['fe80::1%eth0', 0, 'fe80::1'],
    [', ,', 0, 'unknown'],
    ['a\nb', 0, 'unknown'],
    [null, 0, 'unknown'],
  ])('of %j with %i proxies trusted is %s', (passed, proxies, address) =>
    expect(clientAddress(passed, proxies)).toBe(address),
  )
})

// RFC 4291, section 2.5.4: of a unicast address the last 64 bits name the interface; section 2.5.5.2: mapped IPv4.
describe('what tries are counted for', () => {
  test.each([
    ['203.0.113.9', '203.0.113.9'],
    ['::ffff:203.0.113.9', '203.0.113.9'],
    ['2001:db8:1:2:3:4:5:6', '2001:db8:1:2::/64'],
    ['2001:0DB8:1:2::9', '2001:db8:1:2::/64'],
    ['2001:db8::1', '2001:db8:0:0::/64'],
    ['::1', '0:0:0:0::/64'],
    ['unknown', 'unknown'],
  ])('from %s: %s', (address, origin) => expect(originOf(address)).toBe(origin))
})
