/**
 * A file path in the one form in which paths are compared: forward slashes, a capital drive letter, no query and
 * no slash at the end. The bundler names modules with forward slashes on every system; `join` of Windows does not.
 * @param path absolute or relative path, of any system, with or without a query of the bundler
 * @returns the same path with `/` between its parts
 * @example slashed('c:\\bikes\\my shop\\src\\main.tsx') //=> 'C:/bikes/my shop/src/main.tsx'
 */
export function slashed(path: string): string {
  const plain = path.replace(/\?[^/\\]*$/, '').replaceAll('\\', '/');
  const drive = plain.replace(/^[a-z]:/, (letter) => letter.toUpperCase());
  return drive.length > 1 && !/^[A-Z]:\/$/.test(drive) ? drive.replace(/\/+$/, '') : drive;
}
