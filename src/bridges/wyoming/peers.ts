/**
 * Who may speak to a service that knows no password: this machine, and addresses that are named.
 */
import { BlockList, isIP, isIPv6 } from 'node:net';

export interface Peers {
  allows(address: string): boolean;
}

/** Addresses, or ranges such as `192.168.1.0/24`; undefined when one of them is neither. */
export function peersOf(named: readonly string[]): Peers | undefined {
  const list = new BlockList();
  list.addSubnet('127.0.0.0', 8, 'ipv4');
  list.addAddress('::1', 'ipv6');
  for (const one of named) if (!add(list, one)) return undefined;
  return {
    allows: (address) => {
      const plain = address.replace(/^::ffff:(?=\d+\.)/i, '').replace(/%.*$/, '');
      return isIP(plain) !== 0 && list.check(plain, isIPv6(plain) ? 'ipv6' : 'ipv4');
    },
  };
}

function add(list: BlockList, range: string): boolean {
  const [address = '', bits, ...rest] = range.split('/');
  const family = isIP(address) === 4 ? 'ipv4' : 'ipv6';
  const most = family === 'ipv4' ? 32 : 128;
  const length = bits === undefined ? most : Number(bits);
  if (rest.length > 0 || isIP(address) === 0 || (bits !== undefined && !/^\d{1,3}$/.test(bits)))
    return false;
  if (length > most) return false;
  list.addSubnet(address, length, family);
  return true;
}
