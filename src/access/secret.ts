/** Secrets are made here, compared in constant time and kept only as digests. */
import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

/** 256 bits, so a plain digest of it cannot be searched for. */
export const freshSecret = (): string => randomBytes(32).toString('base64url');

export const digestOf = (secret: string): string =>
  createHash('sha256').update(secret).digest('hex');

export const sameDigest = (one: string, other: string): boolean =>
  one.length === other.length && timingSafeEqual(Buffer.from(one), Buffer.from(other));
