/** The pure diagnosis: a case in, an evaluation out. */
export { MODEL_VERSION, evaluate, type EvaluateOptions } from './evaluate.ts'
export { KNOWLEDGE_VERSION, defaultKnowledge, knowledgeHash, type Knowledge } from './knowledge/knowledge.ts'
export { compare } from './compare.ts'
export { calibrate, type Calibration, type Finding } from './learning/calibrate.ts'
