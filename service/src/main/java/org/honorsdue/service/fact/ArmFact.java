package org.honorsdue.service.fact;

/**
 * Arm or service on one paper, expanded, as in {@code Field Artillery}.
 */
public record ArmFact(int paper, String arm, boolean airForces, Basis basis) implements ServiceFact {}
