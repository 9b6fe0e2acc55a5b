/** Where requests go: the same for the client and for every other REST object. */
export function restOptions(apiBase: string): { readonly api: string; readonly version: string } {
  return { api: apiBase, version: '10' };
}
