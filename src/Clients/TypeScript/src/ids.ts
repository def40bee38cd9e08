/**
 * A new id for a record: a UUID of version 7 (RFC 9562), which sorts by the time when it was made. A record sent with an
 * id of your own can be sent again at any time, even days later, and is stored once.
 */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  new DataView(bytes.buffer).setBigUint64(0, (BigInt(Date.now()) << 16n) | 0x7000n | (BigInt(bytes[6]! & 0x0f) << 8n) | BigInt(bytes[7]!));
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  const digits = Array.from(bytes, byte => byte.toString(16).padStart(2, "0")).join("");
  return digits.replace(/^(.{8})(.{4})(.{4})(.{4})/, "$1-$2-$3-$4-");
}
