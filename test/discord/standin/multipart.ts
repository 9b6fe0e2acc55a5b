import { isRecord, type Json } from './json.ts';

export interface FilePart {
  /** The form field, `files[0]`. */
  readonly field: string;
  readonly name: string;
  readonly contentType: string;
  readonly data: Uint8Array;
}

export interface ParsedBody {
  readonly body: unknown;
  readonly files: readonly FilePart[];
}

/** Reads a request body: JSON, or a form with `payload_json` and files. Throws SyntaxError on bad JSON. */
export async function parseBody(raw: Uint8Array<ArrayBuffer>, contentType: string): Promise<ParsedBody> {
  if (raw.length === 0) return { body: undefined, files: [] };
  if (!contentType.startsWith('multipart/form-data')) {
    return { body: JSON.parse(new TextDecoder().decode(raw)) as unknown, files: [] };
  }
  const form = await new Response(raw, { headers: { 'content-type': contentType } }).formData();
  const files: FilePart[] = [];
  const fields: Record<string, unknown> = {};
  for (const [field, value] of form) {
    if (typeof value === 'string') fields[field] = value;
    else {
      const data = new Uint8Array(await value.arrayBuffer());
      files.push({ field, name: value.name, contentType: value.type, data });
    }
  }
  const payload = fields['payload_json'];
  return { body: typeof payload === 'string' ? (JSON.parse(payload) as unknown) : fields, files };
}

/** The message part of a callback body, `{ type, data }`. */
export function callbackData(body: unknown): Json {
  return isRecord(body) && isRecord(body['data']) ? body['data'] : {};
}
