declare module 'text-readability' {
  const readability: { fleschKincaidGrade(text: string): number };
  export = readability;
}
