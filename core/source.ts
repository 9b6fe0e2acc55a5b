/** Where a number comes from. `kind` keeps published values apart from habit and from memory. */
export interface Source {
  readonly title: string;
  readonly kind: 'published' | 'standard' | 'practice' | 'memory' | 'project';
}
