export declare const servePage: () => Promise<{ url: string; close: () => Promise<void> }>;
